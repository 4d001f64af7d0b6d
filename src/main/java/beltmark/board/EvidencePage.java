package beltmark.board;

import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import beltmark.qualification.AsOf;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The records behind one cell of the board.
 *
 * @param view what all pages share
 * @param member whose
 * @param own whether they are the reader's own
 * @param asOf the day it is of
 * @param cell the cell
 * @param reasons why the person stands there, for a qualification
 * @param next what to do next, for a qualification; empty otherwise
 * @param needs the cells a qualification hangs on
 * @param evidence the records, the latest first; for a qualification the orders and events that concern it
 */
public record EvidencePage(
        View view,
        Member member,
        boolean own,
        AsOf asOf,
        Cell cell,
        List<String> reasons,
        String next,
        List<Cell> needs,
        List<Evidence> evidence)
        implements Page {

    public EvidencePage {
        reasons = List.copyOf(reasons);
        needs = List.copyOf(needs);
        evidence = List.copyOf(evidence);
    }

    /** {@return the heading: what it is evidence of} */
    public String title() {
        return view.text("board.group." + cell.column().group().id()) + ": " + title(cell);
    }

    /** {@return the heading of a column} */
    public String title(Cell of) {
        return view.text(of.column().titleKey());
    }

    /** {@return where everything of this person is} */
    public String recordPath() {
        return base() + asOf.query();
    }

    private String base() {
        return "/board/" + (own ? "me" : Long.toString(member.id()));
    }

    /** {@return where the evidence of another cell is} */
    public String path(Cell of) {
        return base() + "/" + of.column().id() + asOf.query();
    }

    /** {@return whether the cell is a qualification, which hangs on other cells} */
    public boolean isQualification() {
        return cell.column().group() == Column.Group.QUALIFICATION;
    }

    /** {@return the heading of one problem, sitting or demonstration} */
    public String title(Evidence one) {
        return switch (cell.column().group()) {
            case PRACTICE ->
                view.text(
                        "board.problem",
                        "code",
                        one.title().what(),
                        "card",
                        view.text("hardware.name." + one.title().card()));
            case QUIZ ->
                view.text(
                        "board.sitting",
                        "right",
                        one.title().right(),
                        "asked",
                        one.title().asked());
            case DEMONSTRATION ->
                view.text("board.shown-on", "conveyor", one.title().what());
            case PAPER -> view.text("qualification.paper." + one.title().what());
            case QUALIFICATION -> view.text("qualification.event." + one.title().what());
        };
    }

    /** {@return how it came out, in words} */
    public String outcome(Evidence one) {
        return switch (cell.column().group()) {
            case PRACTICE -> view.text(one.good() ? "board.outcome.clean" : "board.outcome.not-clean");
            case QUIZ, PAPER -> view.text(one.good() ? "board.passed" : "board.not-passed");
            case DEMONSTRATION -> view.text(one.good() ? "board.signed" : "board.not-passed");
            case QUALIFICATION -> view.text(one.good() ? "board.outcome.counts-for" : "board.outcome.counts-against");
        };
    }

    /** {@return what a record is about, in words} */
    public String about(Evidence.Entry entry) {
        return cell.column().group() == Column.Group.PRACTICE
                ? view.text("problem.part." + entry.about() + ".title")
                : entry.about();
    }

    /** {@return how a record was judged, in words; empty when it was not} */
    public String verdict(Evidence.Entry entry) {
        return entry.verdict().isEmpty() ? "" : view.text("board.verdict." + entry.verdict());
    }

    /** {@return whether a record was judged right} */
    public boolean isRight(Evidence.Entry entry) {
        return entry.verdict().equals("right") || entry.verdict().equals("carried");
    }

    /** {@return what was typed, picked or measured, in words} */
    public String what(Evidence.Entry entry, Evidence.Figure figure) {
        return switch (cell.column().group()) {
            case PRACTICE -> view.text("problem.blank." + entry.about() + "." + figure.what());
            case QUIZ -> view.text("board.chosen");
            case PAPER -> figure.what();
            case DEMONSTRATION, QUALIFICATION ->
                new NotedWords(view).what(figure).orElseGet(() -> view.text("signoff.measure." + figure.what()));
        };
    }

    /** {@return as typed or picked, or a measure exactly as read} */
    public String typed(Evidence.Figure figure) {
        if (isMeasured()) {
            return new NotedWords(view).said(figure).orElseGet(() -> exact(figure.length()));
        }
        String key = "problem.option." + figure.typed();
        boolean option = cell.column().group() == Column.Group.PRACTICE && figure.length() == null;
        return option && view.words().has(key) ? view.text(key) : figure.typed();
    }

    /** {@return what was wanted of a measure and how it was typed, or the slip behind an answer; empty without either} */
    public String aside(Evidence.Entry entry, Evidence.Figure figure) {
        if (figure.slip() != null) {
            return view.text("problem.slip." + entry.about() + "." + figure.slip());
        }
        if (!isMeasured() || figure.length() == null) {
            return "";
        }
        String wanted = figure.wanted() == null ? "" : view.text("board.wanted", "wanted", exact(figure.wanted()));
        String typed = figure.typed().isEmpty() ? "" : view.text("board.as-typed", "typed", figure.typed());
        return Stream.of(wanted, typed).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    }

    private String exact(@Nullable Length length) {
        if (length == null) {
            return "";
        }
        boolean inches = view.words().graduation().unit() == LengthUnit.INCH;
        return LengthPrinter.print(length, inches ? Graduation.SIXTY_FOURTH_INCH : Graduation.MILLIMETRE);
    }

    /** {@return whether measures are compared with what was wanted} */
    public boolean isMeasured() {
        return cell.column().group() == Column.Group.DEMONSTRATION;
    }

    /** {@return how many are shown at most} */
    public int most() {
        return EvidenceStore.MOST;
    }
}
