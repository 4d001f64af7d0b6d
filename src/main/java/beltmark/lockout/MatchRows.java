package beltmark.lockout;

import beltmark.core.lockout.Match;
import beltmark.core.lockout.Question;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The rows of a match as its page shows them, each with the targets of every column to choose from. */
record MatchRows(Wording wording, Question question, AnswerForm form) {

    List<QuestionPage.MatchRow> of(List<String> shown) {
        if (question.match() == null) {
            return List.of();
        }
        Match match = question.match().inOrderOf(shown);
        return IntStream.rangeClosed(1, match.rows().size())
                .mapToObj(row -> new QuestionPage.MatchRow(
                        wording.part(question, match.rows().get(row - 1)), cells(match, row)))
                .toList();
    }

    List<String> headings() {
        return question.match() == null
                ? List.of()
                : IntStream.rangeClosed(1, question.match().columns().size())
                        .mapToObj(column -> wording.column(question, column))
                        .toList();
    }

    private List<QuestionPage.Cell> cells(Match match, int row) {
        List<QuestionPage.Cell> cells = new ArrayList<>();
        for (int column = 1; column <= match.columns().size(); column++) {
            String cell = AnswerForm.cell(row, column);
            List<String> targets = match.columns().get(column - 1).stream()
                    .map(target -> wording.part(question, target))
                    .toList();
            cells.add(new QuestionPage.Cell(
                    AnswerForm.MATCH + cell,
                    wording.column(question, column),
                    targets,
                    form.matched().getOrDefault(cell, "")));
        }
        return cells;
    }
}
