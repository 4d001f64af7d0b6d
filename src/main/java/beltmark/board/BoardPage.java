package beltmark.board;

import beltmark.web.Page;
import beltmark.web.View;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The crew board.
 *
 * @param view what all pages share
 * @param crews the crews to choose from; none for who sees only the own one
 * @param crew the crew chosen, or null for all
 * @param columns the columns
 * @param rows the people, by crew and name
 * @param today the day it is of
 */
public record BoardPage(
        View view, List<Crew> crews, @Nullable Crew crew, List<Column> columns, List<Row> rows, LocalDate today)
        implements Page {

    public BoardPage {
        crews = List.copyOf(crews);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A person.
     *
     * @param member who
     * @param cells what they have passed
     */
    public record Row(Member member, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * Columns of one kind side by side.
     *
     * @param id their kind
     * @param size how many
     */
    public record Span(String id, int size) {}

    /** {@return the kinds of columns, in order} */
    public List<Span> spans() {
        Map<String, Integer> sizes = new LinkedHashMap<>();
        columns.forEach(column -> sizes.merge(column.group().id(), 1, Integer::sum));
        List<Span> spans = new ArrayList<>();
        sizes.forEach((id, size) -> spans.add(new Span(id, size)));
        return spans;
    }

    /** {@return the rows by crew} */
    public Map<String, List<Row>> rowsByCrew() {
        Map<String, List<Row>> byCrew = new LinkedHashMap<>();
        rows.forEach(row -> byCrew.computeIfAbsent(row.member().crew(), crew -> new ArrayList<>())
                .add(row));
        return byCrew;
    }

    /** {@return whether a crew can be chosen} */
    public boolean hasFilter() {
        return !crews.isEmpty();
    }

    /** {@return the heading of a column} */
    public String title(Column column) {
        return view.text(column.titleKey());
    }

    /** {@return what a reader hears of a cell that cannot see where it stands} */
    public String label(Row row, Cell cell) {
        return row.member().name() + ", "
                + view.text("board.group." + cell.column().group().id()) + ", " + title(cell.column()) + ": "
                + cell.word() + " " + cell.day();
    }

    /** {@return the signs with their words} */
    public List<State> legend() {
        return List.of(State.values());
    }
}
