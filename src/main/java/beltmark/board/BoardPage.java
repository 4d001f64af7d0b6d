package beltmark.board;

import beltmark.core.qualification.Status;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The crew board.
 *
 * @param view what all pages share
 * @param crews the crews to choose from; none for who sees only the own one
 * @param cards the ids of the hardware cards to choose from
 * @param query what was asked for
 * @param columns the columns
 * @param rows the people on this page, by crew and name
 * @param total how many there are on all pages
 * @param page which page it is, from 1
 * @param pages how many there are
 */
public record BoardPage(
        View view,
        List<Crew> crews,
        List<String> cards,
        BoardQuery query,
        List<Column> columns,
        List<Row> rows,
        int total,
        int page,
        int pages)
        implements Page {

    private static final String PATH = "/board";

    public BoardPage {
        crews = List.copyOf(crews);
        cards = List.copyOf(cards);
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

    /** {@return what the board says about its day} */
    public String lead() {
        String key = !query.asOf().isPast()
                ? (query.asOf().isOtherDay() ? "board.lead-ahead" : "board.lead")
                : query.asOf().byNow() ? "board.lead-by-now" : "board.lead-then";
        return view.text(key, "day", query.asOf().on());
    }

    /** {@return the crews to choose from, all of them first} */
    public List<Option> crewOptions() {
        return options(
                "board.all-crews", crews.stream().map(crew -> new Option(Long.toString(crew.id()), crew.name())));
    }

    /** {@return the hardware to choose from, all of it first} */
    public List<Option> cardOptions() {
        return options(
                "board.all-cards", cards.stream().map(card -> new Option(card, view.text("hardware.name." + card))));
    }

    /** {@return the statuses to choose from, any of them first} */
    public List<Option> statusOptions() {
        return options(
                "board.any-status",
                Stream.of(Status.values())
                        .map(status -> new Option(status.id(), view.text("qualification.status." + status.id()))));
    }

    private List<Option> options(String allKey, Stream<Option> options) {
        return Stream.concat(Stream.of(new Option("", view.text(allKey))), options)
                .toList();
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

    /** {@return where everything of a person is, as of the same day} */
    public String path(Member member) {
        return PATH + "/" + member.id() + query.asOf().query();
    }

    /** {@return where the evidence of a cell is, as of the same day} */
    public String path(Member member, Cell cell) {
        return PATH + "/" + member.id() + "/" + cell.column().id()
                + query.asOf().query();
    }

    /** {@return where another page of the same board is} */
    public String pagePath(int other) {
        return query.path(PATH, other);
    }

    /** {@return where the file is} */
    public String csvPath() {
        return query.path(PATH + ".csv", 1);
    }

    /** {@return the number of the first person on this page} */
    public int first() {
        return (page - 1) * Board.PAGE_SIZE + 1;
    }
}
