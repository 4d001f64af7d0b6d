package beltmark.board;

import beltmark.board.Board.Sheet;
import beltmark.board.Column.Group;
import beltmark.board.RecordPage.StandingView;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.qualification.Standing;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Makes the pages of the board. */
final class BoardPages {

    private final View view;
    private final Board board;
    private final Cells cells;

    BoardPages(View view, Board board) {
        this.view = view;
        this.board = board;
        this.cells = new Cells(view, board.content(), board.today());
    }

    BoardPage board(Sheet sheet, List<Crew> crews, @Nullable Crew crew) {
        List<BoardPage.Row> rows = sheet.members().stream()
                .map(member -> new BoardPage.Row(member, cells.row(sheet.factsOf(member))))
                .toList();
        return new BoardPage(view, crews, crew, Column.all(board.content()), rows, board.today());
    }

    RecordPage record(Member member, boolean own) {
        PersonFacts facts = board.facts(member);
        List<Cell> row = cells.row(facts);
        List<StandingView> standings = row.stream()
                .filter(cell -> cell.column().group() == Group.QUALIFICATION)
                .map(cell -> new StandingView(
                        cell, cells.next(cells.standing(cell.column().of(), facts))))
                .toList();
        return new RecordPage(view, member, own, row, standings);
    }

    EvidencePage evidence(Member member, boolean own, Column column) {
        PersonFacts facts = board.facts(member);
        return column.group() == Group.QUALIFICATION
                ? qualification(member, own, column, facts)
                : new EvidencePage(
                        view,
                        member,
                        own,
                        cells.cell(column, facts),
                        List.of(),
                        "",
                        List.of(),
                        board.listEvidence(member, column));
    }

    private EvidencePage qualification(Member member, boolean own, Column column, PersonFacts facts) {
        Standing standing = cells.standing(column.of(), facts);
        QualificationRule rule = cells.rule(column.of());
        List<Cell> needs = cells.row(facts).stream()
                .filter(cell -> needs(rule, cell.column()))
                .toList();
        return new EvidencePage(
                view,
                member,
                own,
                cells.cell(column, facts),
                cells.reasons(standing),
                cells.next(standing),
                needs,
                List.of());
    }

    private static boolean needs(QualificationRule rule, Column column) {
        return switch (column.group()) {
            case PRACTICE ->
                rule.clean().stream().anyMatch(need -> need.family().equals(column.of()));
            case QUIZ -> rule.quiz().equals(column.of());
            case DEMONSTRATION -> rule.card().equals(column.of());
            case QUALIFICATION -> false;
        };
    }
}
