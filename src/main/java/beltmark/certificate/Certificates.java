package beltmark.certificate;

import beltmark.certificate.CertificateRecords.IssuedBody;
import beltmark.certificate.CertificateRecords.RevokedBody;
import beltmark.content.Content;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.qualification.Standing;
import beltmark.db.Database;
import beltmark.qualification.AsOf;
import beltmark.qualification.Standings;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.RandomToken;
import beltmark.web.Role;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Issues certificates of what the rules find, revokes them, and tells what one is worth today. */
public final class Certificates {

    private static final int SERIAL_BYTES = 16;
    private static final int LONGEST_REASON = 300;

    private final Database database;
    private final RecordBook book;
    private final Content content;
    private final Clock clock;
    private final SigningKey key;
    private final Standings standings;
    private final CertificateStore store = new CertificateStore();

    /**
     * @param database where certificates are kept
     * @param book where issuing and revoking are recorded
     * @param content the rules
     * @param clock the time and the zone of the site
     * @param key signs the payloads
     */
    public Certificates(Database database, RecordBook book, Content content, Clock clock, SigningKey key) {
        this.database = database;
        this.book = book;
        this.content = content;
        this.clock = clock;
        this.key = key;
        this.standings = new Standings(content.rules());
    }

    /** Why a certificate is not issued or revoked; each has a sentence in the texts. */
    enum Refusal {
        /** The rules do not find the qualification. */
        NOT_QUALIFIED,
        /** No reason, or one too long. */
        NO_REASON,
        /** It is revoked, or another took its place. */
        NOT_CURRENT;

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** {@return the key that checks the certificates of this site} */
    VerifyingKey verifyingKey() {
        return key.verifyingKey();
    }

    /** {@return the day at the site} */
    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** {@return those whose certificates a person sees and issues: the own crew, or everybody} */
    List<Holder> listHolders(Visitor visitor) {
        return database.read(store::listHolders).stream()
                .filter(holder -> looksAfter(visitor, holder))
                .toList();
    }

    private static boolean looksAfter(Visitor visitor, Holder holder) {
        return visitor.has(Role.COORDINATOR)
                || visitor.has(Role.ADMIN)
                || (visitor.has(Role.SUPERVISOR) && visitor.crewId() == holder.crewId());
    }

    /** {@return whether a person may issue and revoke certificates of another; nobody their own} */
    static boolean mayIssue(Visitor visitor, Holder holder) {
        boolean signs = visitor.has(Role.COORDINATOR) || visitor.has(Role.SUPERVISOR);
        return signs && looksAfter(visitor, holder) && visitor.personId() != holder.id();
    }

    /** {@return somebody whose certificates that person may see; throws {@link NotFound} for any other} */
    Holder getHolder(Visitor visitor, long person) {
        return database.read(handle -> store.findHolder(handle, person))
                .filter(holder -> holder.id() == visitor.personId() || looksAfter(visitor, holder))
                .orElseThrow(() -> new NotFound("person " + person + " for " + visitor.personId()));
    }

    /**
     * A qualification of a person with the certificates of it.
     *
     * @param rule the rule of today
     * @param standing where the person stands
     * @param certificates the latest first, each with what it is worth
     */
    public record Held(QualificationRule rule, Standing standing, List<Worth> certificates) {}

    /**
     * A certificate and what it is worth today.
     *
     * @param issued the certificate, null when there is none of that serial
     * @param payload what it says, null when it is not signed by this site
     * @param state what it is worth
     */
    public record Worth(@Nullable Issued issued, @Nullable Payload payload, CertificateState state) {}

    /** {@return every qualification there is, as a person stands with it} */
    List<Held> listHeld(long person) {
        return database.read(handle -> {
            List<Issued> issued = store.list(handle, person);
            return content.rules().listValid(today()).stream()
                    .map(rule -> held(handle, person, rule, issued))
                    .toList();
        });
    }

    private Held held(Handle handle, long person, QualificationRule rule, List<Issued> issued) {
        List<Worth> certificates = issued.stream()
                .filter(certificate -> certificate.qualification().equals(rule.id()))
                .map(certificate -> worth(handle, certificate))
                .toList();
        return new Held(rule, standing(handle, person, rule.id()), certificates);
    }

    private Standing standing(Handle handle, long person, String qualification) {
        return standings.of(handle, person, qualification, today(), AsOf.EVERYTHING);
    }

    private Worth worth(Handle handle, Issued issued) {
        boolean ruled =
                content.rules().findValid(issued.qualification(), today()).isPresent();
        boolean qualified = ruled
                && store.findHolder(handle, issued.personId()).isPresent()
                && standing(handle, issued.personId(), issued.qualification())
                        .status()
                        .isValid();
        Payload payload = Token.open(issued.token(), verifyingKey()).orElse(null);
        return new Worth(issued, payload, issued.state(today(), qualified));
    }

    /** Issues a certificate of what the rules find today; it takes the place of any earlier one. */
    CompletableFuture<Optional<Refusal>> issue(
            Visitor visitor, long person, String qualification, OperationId operation) {
        Holder holder = getHolder(visitor, person);
        QualificationRule rule = content.rules()
                .findValid(qualification, today())
                .orElseThrow(() -> new NotFound("qualification " + qualification));
        if (!mayIssue(visitor, holder)) {
            throw new NotFound("certificates of " + person + " for " + visitor.personId());
        }
        return database.write(handle -> issue(handle, visitor, holder, rule, operation));
    }

    private Optional<Refusal> issue(
            Handle handle, Visitor visitor, Holder holder, QualificationRule rule, OperationId operation) {
        if (book.isRecorded(handle, operation.value())) {
            return Optional.empty();
        }
        Standing standing = standing(handle, holder.id(), rule.id());
        if (!standing.status().isValid()) {
            return Optional.of(Refusal.NOT_QUALIFIED);
        }
        Payload payload = payload(holder, rule, standing);
        String token = Token.of(payload, key);
        String before = store.list(handle, holder.id()).stream()
                .filter(earlier -> earlier.isLatest() && earlier.qualification().equals(rule.id()))
                .map(Issued::serial)
                .findFirst()
                .orElse("");
        IssuedBody body =
                new IssuedBody(payload.serial(), holder.name(), rule.id(), payload.from(), payload.to(), before, token);
        Recorded recorded = append(handle, CertificateRecords.ISSUED, operation, holder.id(), visitor, body);
        store.add(handle, recorded.sequence(), holder.id(), payload, token);
        return Optional.empty();
    }

    private Payload payload(Holder holder, QualificationRule rule, Standing standing) {
        return new Payload(
                RandomToken.ofBytes(SERIAL_BYTES),
                holder.name(),
                rule.id(),
                rule.card().orElse(""),
                today(),
                standing.findLastDay().orElse(today()),
                clock.instant().truncatedTo(ChronoUnit.SECONDS),
                verifyingKey().id());
    }

    /** Takes a certificate back, for a reason that stays on record and off the page that everybody sees. */
    CompletableFuture<Optional<Refusal>> revoke(Visitor visitor, String serial, String reason, OperationId operation) {
        Issued issued = get(visitor, serial);
        if (!mayIssue(visitor, getHolder(visitor, issued.personId()))) {
            throw new NotFound("certificate " + serial + " for " + visitor.personId());
        }
        if (reason.isEmpty() || reason.length() > LONGEST_REASON) {
            return CompletableFuture.completedFuture(Optional.of(Refusal.NO_REASON));
        }
        return database.write(handle -> revoke(handle, visitor, serial, reason, operation));
    }

    private Optional<Refusal> revoke(
            Handle handle, Visitor visitor, String serial, String reason, OperationId operation) {
        Issued issued = getIssued(handle, serial);
        if (book.isRecorded(handle, operation.value())) {
            return Optional.empty();
        }
        if (issued.revokedFor() != null || !issued.isLatest()) {
            return Optional.of(Refusal.NOT_CURRENT);
        }
        RevokedBody body = new RevokedBody(serial, reason);
        Recorded recorded = append(handle, CertificateRecords.REVOKED, operation, issued.personId(), visitor, body);
        store.revoke(handle, recorded.sequence(), issued.record(), reason);
        return Optional.empty();
    }

    private Recorded append(
            Handle handle, String kind, OperationId operation, long person, Visitor visitor, Object body) {
        return book.append(
                handle, new Entry(kind, operation.value(), person, visitor.personId(), clock.instant(), body));
    }

    /** {@return a certificate that this person may see, their own or of somebody they look after} */
    Issued get(Visitor visitor, String serial) {
        Issued issued = database.read(handle -> getIssued(handle, serial));
        getHolder(visitor, issued.personId());
        return issued;
    }

    private Issued getIssued(Handle handle, String serial) {
        return store.find(handle, serial).orElseThrow(() -> new NotFound("certificate " + serial));
    }

    /** {@return what a certificate is worth today, by its serial or by all that is printed in its code} */
    Worth lookUp(String printed) {
        if (Payload.isSerial(printed)) {
            return lookUpSerial(printed, null);
        }
        return Token.open(printed, verifyingKey())
                .map(payload -> lookUpSerial(payload.serial(), payload))
                .orElse(new Worth(null, null, CertificateState.NOT_SIGNED));
    }

    private Worth lookUpSerial(String serial, @Nullable Payload payload) {
        return database.read(handle -> store.find(handle, serial)
                .map(issued -> worth(handle, issued))
                .orElse(new Worth(null, payload, CertificateState.UNKNOWN)));
    }
}
