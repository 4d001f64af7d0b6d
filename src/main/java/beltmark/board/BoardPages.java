package beltmark.board;

import beltmark.board.Board.Sheet;
import beltmark.board.Column.Group;
import beltmark.board.RecordPage.StandingView;
import beltmark.core.qualification.Needs;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.qualification.Standing;
import beltmark.core.setup.HardwareCard;
import beltmark.mastery.HabitWords;
import beltmark.qualification.AsOf;
import beltmark.qualification.StandingWords;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.List;

/** Makes the pages of the board, as of a day. */
final class BoardPages {

    private final View view;
    private final Board board;
    private final AsOf asOf;
    private final Cells cells;
    private final StandingWords words;

    BoardPages(View view, Board board, AsOf asOf) {
        this.view = view;
        this.board = board;
        this.asOf = asOf;
        this.cells = new Cells(view, board.content(), asOf.on());
        this.words = new StandingWords(view.words());
    }

    BoardPage board(Sheet sheet, List<Crew> crews, BoardQuery query) {
        List<Column> columns =
                query.card().isEmpty() ? columns() : Column.forCard(board.content(), asOf.on(), query.card());
        List<BoardPage.Row> rows = new ArrayList<>();
        sheet.people().forEach((member, facts) -> rows.add(new BoardPage.Row(member, cells.row(columns, facts))));
        List<String> cards =
                board.content().cards().stream().map(HardwareCard::id).toList();
        return new BoardPage(view, crews, cards, query, columns, rows, sheet.total(), sheet.page(), sheet.pages());
    }

    private List<Column> columns() {
        return Column.all(board.content(), asOf.on());
    }

    RecordPage record(Member member, boolean own) {
        PersonFacts facts = board.facts(member, asOf);
        List<Cell> row = cells.row(columns(), facts);
        List<StandingView> standings = row.stream()
                .filter(cell -> cell.column().group() == Group.QUALIFICATION)
                .map(cell -> new StandingView(
                        cell, words.next(facts.judge().standing(cell.column().of()))))
                .toList();
        return new RecordPage(
                view, member, own, asOf, row, standings, HabitWords.tell(board.habits(member), view.words()));
    }

    EvidencePage evidence(Member member, boolean own, Column column) {
        PersonFacts facts = board.facts(member, asOf);
        List<Evidence> evidence = board.listEvidence(member, column, asOf);
        return column.group() == Group.QUALIFICATION
                ? qualification(member, own, column, facts, evidence)
                : new EvidencePage(
                        view, member, own, asOf, cells.cell(column, facts), List.of(), "", List.of(), evidence);
    }

    private EvidencePage qualification(
            Member member, boolean own, Column column, PersonFacts facts, List<Evidence> orders) {
        Standing standing = facts.judge().standing(column.of());
        QualificationRule rule = cells.rule(column.of());
        List<Cell> needs = cells.row(columns(), facts).stream()
                .filter(cell -> needs(rule, cell.column()))
                .toList();
        return new EvidencePage(
                view,
                member,
                own,
                asOf,
                cells.cell(column, facts),
                words.reasons(standing),
                words.next(standing),
                needs,
                orders);
    }

    private static boolean needs(QualificationRule rule, Column column) {
        Needs needs = rule.needs();
        return switch (column.group()) {
            case PRACTICE ->
                needs.clean().stream().anyMatch(need -> need.family().equals(column.of()));
            case QUIZ ->
                needs.quiz().filter(quiz -> quiz.id().equals(column.of())).isPresent();
            case PAPER -> needs.papers().stream().anyMatch(paper -> paper.id().equals(column.of()));
            case DEMONSTRATION ->
                needs.demonstrations().isPresent()
                        && rule.card().filter(column.of()::equals).isPresent();
            case QUALIFICATION -> needs.prerequisites().contains(column.of());
        };
    }
}
