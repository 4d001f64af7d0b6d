package beltmark.analysis;

import beltmark.core.statistics.ResponseCounts;
import java.util.List;
import java.util.Optional;

/**
 * A table of people by items that was read from a file.
 *
 * @param hasHeader whether its first line names the columns
 * @param idColumn the heading of the first column where that tells who a row is, empty without a header; nothing if there
 *     is no such column
 * @param items the headings of the items, or their numbers from 1
 * @param blankRows how many rows have no answer at all
 * @param counts the answers, counted
 */
public record ResponseTable(
        boolean hasHeader, Optional<String> idColumn, List<String> items, long blankRows, ResponseCounts counts) {

    /** Keeps its own list. */
    public ResponseTable {
        items = List.copyOf(items);
    }
}
