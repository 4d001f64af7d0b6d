package beltmark.desk;

import beltmark.core.procedure.ProcedureCard;
import beltmark.core.qualification.EventKind;
import beltmark.core.qualification.Scope;
import beltmark.db.Database;
import beltmark.qualification.FactBook;
import beltmark.qualification.NewFact;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;

/** What is done with the inspections of written procedures: recorded, listed by machine. */
public final class Inspections {

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final FactBook facts = new FactBook();
    private final InspectionStore store = new InspectionStore();

    /**
     * @param database where they are kept
     * @param book where they are recorded
     * @param clock the time at the site
     */
    public Inspections(Database database, RecordBook book, Clock clock) {
        this.database = database;
        this.book = book;
        this.clock = clock;
    }

    /** {@return the machines with a written procedure, by name} */
    List<Machine> listMachines() {
        return database.read(handle -> store.listMachines(handle, clock.getZone()));
    }

    /** Records an inspection. A finding holds back whoever hangs on the procedure, until a later one is without. */
    CompletableFuture<Long> make(long visitor, InspectionMade made, String operation) {
        return database.write(handle -> {
            Entry entry = new Entry("desk.inspection", operation, made.inspector(), visitor, clock.instant(), made);
            Recorded recorded = book.append(handle, entry);
            if (recorded.isNew()) {
                store.add(handle, recorded.sequence(), made);
                addFacts(handle, recorded.sequence(), made);
            }
            return recorded.sequence();
        });
    }

    private void addFacts(Handle handle, long record, InspectionMade made) {
        Scope scope = Scope.procedure(ProcedureCard.qualificationId(made.procedure()));
        if (made.finding()) {
            facts.add(handle, record, NewFact.event(EventKind.INSPECTION_FAILED, scope, made.inspectedOn()));
            return;
        }
        store.listSettled(handle, record, made)
                .forEach(earlier -> facts.add(handle, record, NewFact.release(scope, earlier, made.inspectedOn())));
    }
}
