package beltmark.signoff;

import beltmark.content.Content;
import beltmark.core.qualification.Judge;
import beltmark.core.setup.HardwareCard;
import beltmark.db.Database;
import beltmark.qualification.Standings;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * Who may be assessor on a hardware on a day: a supervisor who holds its qualification that day. The first ones of a site
 * cannot, because somebody must have signed them off; a coordinator appoints them for some time, on record.
 */
public final class Assessors {

    /** The longest that an appointment may last, in days. */
    static final int MOST_DAYS = 731;

    /** The longest reason, in characters. */
    static final int LONGEST_REASON = 200;

    private static final String KIND = "signoff.assessor-appointed";

    private final Database database;
    private final RecordBook book;
    private final Content content;
    private final Clock clock;
    private final Standings standings;
    private final AssessorStore store = new AssessorStore();

    Assessors(Database database, RecordBook book, Content content, Clock clock) {
        this.database = database;
        this.book = book;
        this.content = content;
        this.clock = clock;
        this.standings = new Standings(content.rules());
    }

    /** Why somebody is not appointed; each has one sentence in the text files. */
    public enum Fault {
        /** Nobody appoints themselves. */
        SELF("self"),
        /** The last day is before the first, or too far from it. */
        DAYS("days"),
        /** No reason is given, or too long a one. */
        REASON("reason");

        private final String id;

        Fault(String id) {
            this.id = id;
        }

        String id() {
            return id;
        }
    }

    /**
     * One assessor and one hardware.
     *
     * @param card the hardware card
     * @param basis on what the person is assessor today, null when not
     * @param appointed the latest appointment, null when there is none
     */
    record Line(HardwareCard card, @Nullable Basis basis, AssessorStore.@Nullable Found appointed) {}

    /** {@return on what somebody is assessor on a hardware on a day, empty when not} */
    Optional<Basis> find(Handle handle, long person, String card, LocalDate on) {
        return isQualified(handle, person, card, on)
                ? Optional.of(Basis.QUALIFIED)
                : store.find(handle, person, card)
                        .filter(found -> found.covers(on))
                        .map(found -> Basis.appointed(found.record()));
    }

    /** By what is known now of that day. */
    private boolean isQualified(Handle handle, long person, String card, LocalDate on) {
        Judge judge = standings.judge(handle, person, on, clock.instant());
        return content.rules().listValid(on).stream()
                .filter(rule -> rule.card().filter(card::equals).isPresent())
                .anyMatch(rule -> judge.standing(rule.id()).status().isValid());
    }

    Optional<Basis> find(long person, String card, LocalDate on) {
        return database.read(handle -> find(handle, person, card, on));
    }

    /** {@return everybody whose role it is to sign off} */
    List<Fitter> listCandidates() {
        return database.read(store::listCandidates);
    }

    Fitter getCandidate(long person) {
        return listCandidates().stream()
                .filter(one -> one.id() == person)
                .findFirst()
                .orElseThrow(() -> new NotFound("no candidate " + person));
    }

    /** {@return where somebody stands on each hardware today} */
    List<Line> listLines(Fitter candidate) {
        LocalDate today = LocalDate.now(clock);
        return database.read(handle -> content.cards().stream()
                .map(card -> new Line(
                        card,
                        find(handle, candidate.id(), card.id(), today).orElse(null),
                        store.find(handle, candidate.id(), card.id()).orElse(null)))
                .toList());
    }

    /** {@return the hardware card of an id; throws {@link NotFound} when there is none} */
    HardwareCard getCard(String id) {
        return content.findCard(id).orElseThrow(() -> new NotFound("no card"));
    }

    /** {@return why an appointment cannot be made, empty when it can} */
    Optional<Fault> findFault(Visitor coordinator, long person, Appointment body) {
        if (person == coordinator.personId()) {
            return Optional.of(Fault.SELF);
        }
        if (body.last().isBefore(body.first())
                || body.last().isAfter(body.first().plusDays(MOST_DAYS))) {
            return Optional.of(Fault.DAYS);
        }
        int length = body.reason().codePointCount(0, body.reason().length());
        return length == 0 || length > LONGEST_REASON ? Optional.of(Fault.REASON) : Optional.empty();
    }

    /** Appoints a supervisor as assessor on a hardware; the number of the record is there when it is on the disk. */
    public CompletableFuture<Long> appoint(Visitor coordinator, long person, Appointment body, OperationId operation) {
        if (findFault(coordinator, person, body).isPresent()) {
            throw new IllegalArgumentException("no appointment: " + body);
        }
        return database.write(handle -> {
            Entry entry = new Entry(KIND, operation.value(), person, coordinator.personId(), clock.instant(), body);
            Recorded recorded = book.append(handle, entry);
            if (recorded.isNew()) {
                store.add(handle, recorded.sequence(), person, body);
            }
            return recorded.sequence();
        });
    }
}
