package beltmark.procedure;

import beltmark.core.procedure.ProcedureCard;
import beltmark.core.qualification.EventKind;
import beltmark.core.qualification.Scope;
import beltmark.db.Database;
import beltmark.qualification.FactBook;
import beltmark.qualification.NewFact;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.web.NotFound;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;

/** What is done with written procedures: entered, changed, read. */
public final class Procedures {

    private static final String ENTERED = "procedure.entered";
    private static final String CHANGED = "procedure.changed";

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final FactBook facts = new FactBook();
    private final ProcedureStore store = new ProcedureStore();

    /**
     * @param database where versions are kept
     * @param book where they are recorded
     * @param clock the time
     */
    public Procedures(Database database, RecordBook book, Clock clock) {
        this.database = database;
        this.book = book;
        this.clock = clock;
    }

    /** {@return the latest version of every procedure, by machine} */
    List<VersionRow> list() {
        return database.read(store::listLatest);
    }

    /** {@return a procedure in its latest version, with its versions and holders} */
    Found get(String procedure) {
        return database.read(handle -> {
            List<VersionRow> versions = store.listVersions(handle, procedure);
            if (versions.isEmpty()) {
                throw new NotFound("procedure " + procedure);
            }
            return new Found(entered(handle, versions.get(0)).card(), versions, store.listHolders(handle, procedure));
        });
    }

    /** {@return whether there is a procedure of that id already} */
    boolean isTaken(String procedure) {
        return database.read(handle -> store.findLatest(handle, procedure)).isPresent();
    }

    private ProcedureEntered entered(Handle handle, VersionRow version) {
        return book.find(handle, version.record()).orElseThrow().bodyAs(ProcedureEntered.class);
    }

    /**
     * Keeps a version: the first of a new procedure, or the next one of a procedure that exists. What says the same as
     * the version in force is not kept again.
     *
     * @return the id of the procedure
     */
    CompletableFuture<String> keep(long person, ProcedureCard card, String reason, String operation) {
        return database.write(handle -> {
            Optional<VersionRow> latest = store.findLatest(handle, card.id());
            if (latest.isPresent() && entered(handle, latest.get()).card().saysTheSameAs(card)) {
                return card.id();
            }
            int version = latest.map(row -> row.version() + 1).orElse(1);
            ProcedureCard next = new ProcedureCard(
                    card.id(), version, card.machine(), card.use(), card.points(), card.energies(), card.steps());
            record(handle, person, new ProcedureEntered(next, reason), operation);
            return card.id();
        });
    }

    private void record(Handle handle, long person, ProcedureEntered entered, String operation) {
        Instant now = clock.instant();
        boolean changes = entered.card().version() > 1;
        Recorded recorded =
                book.append(handle, new Entry(changes ? CHANGED : ENTERED, operation, person, person, now, entered));
        if (recorded.isNew()) {
            store.addVersion(handle, recorded.sequence(), entered.card(), person, now);
            if (changes) {
                Scope scope = Scope.procedure(entered.card().qualificationId());
                LocalDate today = LocalDate.ofInstant(now, clock.getZone());
                facts.add(handle, recorded.sequence(), NewFact.event(EventKind.PROCEDURE_CHANGED, scope, today));
            }
        }
    }

    /**
     * A procedure.
     *
     * @param card its latest version
     * @param versions all versions, the latest first
     * @param holders who has passed a paper that asked about it
     */
    record Found(ProcedureCard card, List<VersionRow> versions, List<Holder> holders) {}
}
