package beltmark.qualification;

import beltmark.core.qualification.CleanNeed;
import java.time.LocalDate;
import org.jdbi.v3.core.Handle;

/**
 * Writes down what counts for or against a qualification, in the change in which a feature appends the record that says
 * so. All methods take the number of that record, whose time is when we knew.
 */
public final class FactBook {

    private final FactStore store = new FactStore();

    /** Adds a fact; one of a person's own work also counts as activity on that day. */
    public void add(Handle handle, long record, NewFact fact) {
        store.add(handle, record, fact);
        if (fact.isPersonsWork()) {
            active(handle, record, fact.scope().person(), fact.on());
        }
        if (fact.by() != 0) {
            active(handle, record, fact.by(), fact.on());
        }
    }

    /** Adds that a problem was worked clean. No rule asks for more than {@link CleanNeed#MOST}, so later ones are not kept. */
    public void clean(Handle handle, long record, long person, String family, LocalDate on) {
        store.addClean(handle, record, person, family, on, CleanNeed.MOST);
    }

    /** Adds that a person did something on a day; without effect from the second time on that day. */
    public void active(Handle handle, long record, long person, LocalDate on) {
        store.addActivity(handle, record, person, on);
    }
}
