package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.content.Content;
import beltmark.core.setup.Tip;
import beltmark.db.Database;
import beltmark.people.Pins;
import beltmark.qualification.FactBook;
import beltmark.qualification.NewFact;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.recordbook.StoredEntry;
import beltmark.signoff.DemonstrationRecord.Signed;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** The verbs of sign-off: who may be signed off, on which hardware, and signing. */
public final class Signoff {

    /** How long after the day a demonstration may still be signed. */
    static final int MOST_DAYS_BACK = 7;

    private static final String PASSED = "signoff.demonstration";
    private static final String NOT_PASSED = "signoff.not-passed";
    private static final String CHECKLIST = "set-up";
    private static final int MOST_SIGNED_SHOWN = 10;

    private final Database database;
    private final RecordBook book;
    private final Content content;
    private final Pins pins;
    private final Clock clock;
    private final SignoffStore store = new SignoffStore();
    private final Assessors assessors;
    private final FactBook facts = new FactBook();

    /**
     * @param database where sign-offs are kept
     * @param book where they are recorded
     * @param content hardware cards and what is to be watched
     * @param pins how the signing person is identified again
     * @param clock the time and the zone of the site
     */
    public Signoff(Database database, RecordBook book, Content content, Pins pins, Clock clock) {
        this.database = database;
        this.book = book;
        this.content = content;
        this.pins = pins;
        this.clock = clock;
        this.assessors = new Assessors(database, book, content, clock);
    }

    /**
     * A signature about to be given.
     *
     * @param pin the PIN, typed again
     * @param meaning what it says
     * @param operation names the form, so that sending it twice makes one record
     * @param at when the PIN was sent, by the clock of the device; null when it did not say
     */
    public record Signature(
            String pin,
            Meaning meaning,
            OperationId operation,
            @Nullable Instant at) {}

    /** {@return who may be assessor} */
    public Assessors assessors() {
        return assessors;
    }

    /** {@return the people a supervisor may sign off: the own crew without the supervisor} */
    List<Fitter> listFitters(Visitor assessor) {
        return database.read(handle -> store.listFitters(handle, assessor.crewId(), assessor.personId()));
    }

    /** {@return what a supervisor signed last} */
    List<SignedLine> listSigned(Visitor assessor) {
        return database.read(handle -> store.listSigned(handle, assessor.personId(), MOST_SIGNED_SHOWN));
    }

    /** {@return a person of the supervisor's crew, possibly the supervisor; throws {@link NotFound} for anybody else} */
    Fitter getFitter(Visitor assessor, long person) {
        return database.read(handle -> getFitter(handle, assessor, person));
    }

    private Fitter getFitter(Handle handle, Visitor assessor, long person) {
        return store.findFitter(handle, person)
                .filter(fitter -> fitter.crewId() == assessor.crewId())
                .orElseThrow(() -> new NotFound("person " + person + " for " + assessor.personId()));
    }

    /** {@return the hardware of an address; throws {@link NotFound} when there is none} */
    public Rig getRig(String card, String tip) {
        return new Rig(
                content.findCard(card).orElseThrow(() -> new NotFound("no card")),
                Stream.of(Tip.values())
                        .filter(known -> known.id().equals(tip))
                        .findFirst()
                        .orElseThrow(() -> new NotFound("no tip")));
    }

    /** {@return every hardware card with each of its tips} */
    List<Rig> listRigs() {
        return content.cards().stream()
                .flatMap(card -> Stream.of(Tip.values()).map(tip -> new Rig(card, tip)))
                .toList();
    }

    /** {@return what is watched while a set-up is shown} */
    public Checklist checklist() {
        return content.getChecklist(CHECKLIST);
    }

    /** {@return the day at the site} */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** {@return the days for which a demonstration can be signed today, the latest first} */
    static List<LocalDate> daysUpTo(LocalDate today) {
        return Stream.iterate(today, day -> day.minusDays(1))
                .limit(MOST_DAYS_BACK + 1L)
                .toList();
    }

    /** Signs a demonstration; the record is on the disk when the result is there. */
    public CompletableFuture<Signing> sign(Visitor assessor, long person, Demonstration shown, Signature signature) {
        Fitter fitter = getFitter(assessor, person);
        Refusal refusal = refusal(assessor, fitter, shown);
        if (refusal == null && !Pins.isSixDigits(signature.pin())) {
            refusal = Refusal.PIN_NOT_SIX_DIGITS;
        }
        if (refusal != null) {
            return CompletableFuture.completedFuture(Signing.refused(refusal));
        }
        return pins.confirmPin(assessor.personId(), signature.pin())
                .thenCompose(same -> same
                        ? database.write(handle -> record(handle, assessor, person, shown, signature))
                        : CompletableFuture.completedFuture(Signing.refused(Refusal.WRONG_PIN)));
    }

    /** {@return why a demonstration cannot be signed by somebody, whatever the PIN; null when it can} */
    @Nullable
    Refusal refusal(Visitor assessor, Fitter fitter, Demonstration shown) {
        if (fitter.id() == assessor.personId()) {
            return Refusal.SELF;
        }
        if (!daysUpTo(today()).contains(shown.on())) {
            return Refusal.DAY;
        }
        if (findBasis(assessor, shown).isEmpty()) {
            return Refusal.NOT_ASSESSOR;
        }
        return shown.unexplained().isEmpty() ? null : Refusal.OUT_OF_TOLERANCE;
    }

    /** {@return on what somebody was assessor of what was shown on that day} */
    Optional<Basis> findBasis(Visitor assessor, Demonstration shown) {
        return assessors.find(assessor.personId(), shown.rig().card().id(), shown.on());
    }

    private Signing record(Handle handle, Visitor assessor, long person, Demonstration shown, Signature signature) {
        Fitter fitter = getFitter(handle, assessor, person);
        Basis basis = assessors
                .find(handle, assessor.personId(), shown.rig().card().id(), shown.on())
                .orElse(null);
        if (basis == null) {
            return Signing.refused(Refusal.NOT_ASSESSOR);
        }
        DeviceTimes device = new DeviceTimes(shown.place().enteredAt(), signature.at());
        DemonstrationRecord body = DemonstrationRecord.of(
                new Signed(fitter.name(), assessor.name(), basis, signature.meaning(), device), shown);
        String kind = shown.isPassed() ? PASSED : NOT_PASSED;
        Entry entry = new Entry(
                kind, signature.operation().value(), person, assessor.personId(), happenedAt(shown.on()), body);
        Recorded recorded = book.append(handle, entry);
        if (recorded.isNew()) {
            spellOut(handle, recorded.sequence(), entry, shown, body);
            return new Signing(null, recorded.sequence());
        }
        boolean same = getBody(handle, recorded.sequence()).saysTheSameAs(body);
        return new Signing(same ? null : Refusal.SIGNED_OTHERWISE, recorded.sequence());
    }

    private void spellOut(Handle handle, long record, Entry entry, Demonstration shown, DemonstrationRecord body) {
        if (shown.isPassed()) {
            store.add(handle, record, entry.subject(), entry.actor(), body);
            facts.add(handle, record, NewFact.demonstration(entry.subject(), body.card(), entry.actor(), shown.on()));
        } else {
            store.addNotPassed(handle, record, entry.subject(), entry.actor(), body);
            facts.active(handle, record, entry.subject(), shown.on());
            facts.active(handle, record, entry.actor(), shown.on());
        }
        body.flags().forEach(flag -> store.addFlag(handle, record, flag));
    }

    /** The hour of an earlier day is not asked for; the record says its beginning, at the site. */
    private Instant happenedAt(LocalDate on) {
        return on.equals(today())
                ? clock.instant()
                : on.atStartOfDay(clock.getZone()).toInstant();
    }

    private DemonstrationRecord getBody(Handle handle, long record) {
        return getEntry(handle, record).bodyAs(DemonstrationRecord.class);
    }

    private StoredEntry getEntry(Handle handle, long record) {
        return book.find(handle, record)
                .filter(entry -> entry.kind().equals(PASSED) || entry.kind().equals(NOT_PASSED))
                .orElseThrow(() -> new NotFound("no sign-off " + record));
    }

    /** {@return a record that this supervisor signed; throws {@link NotFound} for any other} */
    StoredEntry getSigned(Visitor assessor, long record) {
        StoredEntry entry = database.read(handle -> getEntry(handle, record));
        if (entry.actor() != assessor.personId()) {
            throw new NotFound("sign-off " + record + " for " + assessor.personId());
        }
        return entry;
    }
}
