package beltmark.board;

import beltmark.qualification.AsOf;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * What one person has passed: the row of the board, written out.
 *
 * @param view what all pages share
 * @param member who
 * @param own whether it is the reader's own
 * @param asOf the day it is of
 * @param cells what they have passed
 * @param standings where they stand with each qualification
 * @param habits slips of theirs that have become habits, in a sentence each; those of today, whatever day is asked about
 */
public record RecordPage(
        View view,
        Member member,
        boolean own,
        AsOf asOf,
        List<Cell> cells,
        List<StandingView> standings,
        List<String> habits)
        implements Page {

    public RecordPage {
        cells = List.copyOf(cells);
        standings = List.copyOf(standings);
        habits = List.copyOf(habits);
    }

    /**
     * A qualification in words.
     *
     * @param cell where the person stands
     * @param next what to do next
     */
    public record StandingView(Cell cell, String next) {}

    /** {@return the heading} */
    public String title() {
        return own ? view.text("board.my-record") : member.name();
    }

    /** {@return the heading of a column} */
    public String title(Cell cell) {
        return view.text(cell.column().titleKey());
    }

    /** {@return where the evidence of a cell is} */
    public String path(Cell cell) {
        return "/board/" + (own ? "me" : Long.toString(member.id())) + "/"
                + cell.column().id() + asOf.query();
    }

    /** {@return the cells that are no qualification} */
    public List<Cell> passed() {
        return cells.stream()
                .filter(cell -> cell.column().group() != Column.Group.QUALIFICATION)
                .toList();
    }
}
