package beltmark.core.problem;

import beltmark.core.units.Quantity;
import java.util.List;

/**
 * A table that the problem shows, such as the chart of a card or a list of parts.
 *
 * @param id hyphenated name, the key of its caption
 * @param columns hyphenated names, the keys of the column headings; the first one heads the rows
 * @param rows the values, each row as long as the columns
 */
public record Exhibit(String id, List<String> columns, List<List<Quantity>> rows) {

    public Exhibit {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Quantity> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException("exhibit " + id + " has " + columns.size() + " columns: " + row);
            }
        }
    }
}
