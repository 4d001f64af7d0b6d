package beltmark.review.first;

import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** Reads the totals over first attempts; how long the history is does not matter to it. */
public final class FirstTotals {

    private final FirstTotalsStore store = new FirstTotalsStore();

    /** {@return the months in which somebody sat that quiz for the first time, the earliest first} */
    public List<String> listMonths(Handle handle, String quiz) {
        return store.listMonths(handle, quiz);
    }

    /** {@return the totals of one crew, 0 for all, in a period} */
    public FirstAttempts of(Handle handle, String quiz, long crew, Period period) {
        return new FirstAttempts(
                crew,
                store.listScores(handle, quiz, crew, period),
                store.listQuestions(handle, quiz, crew, period),
                store.listMisses(handle, quiz, crew, period),
                store.listCrewSizes(handle, quiz, period),
                crew == 0 ? Map.of() : store.listEverywhere(handle, quiz, period));
    }
}
