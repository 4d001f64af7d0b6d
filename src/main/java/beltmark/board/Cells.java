package beltmark.board;

import beltmark.board.PersonFacts.Worked;
import beltmark.content.Content;
import beltmark.core.qualification.CleanNeed;
import beltmark.core.qualification.Finding;
import beltmark.core.qualification.Judge;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.qualification.Standing;
import beltmark.core.qualification.Status;
import beltmark.core.units.Word;
import beltmark.web.View;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says what a person has passed, column by column. */
final class Cells {

    private final View view;
    private final Content content;
    private final LocalDate today;

    /**
     * @param view the words
     * @param content families, cards and rules
     * @param today the day asked about
     */
    Cells(View view, Content content, LocalDate today) {
        this.view = view;
        this.content = content;
        this.today = today;
    }

    List<Cell> row(PersonFacts facts) {
        return Column.all(content).stream().map(column -> cell(column, facts)).toList();
    }

    Cell cell(Column column, PersonFacts facts) {
        return switch (column.group()) {
            case PRACTICE -> practice(column, facts.worked(column.of()));
            case QUIZ -> quiz(column, facts);
            case DEMONSTRATION -> demonstration(column, facts);
            case QUALIFICATION -> qualification(column, facts);
        };
    }

    private Cell practice(Column column, Worked worked) {
        int need = need(column.of());
        String day = worked.lastClean().map(view.words()::day).orElse("");
        if (worked.clean() >= need) {
            return new Cell(column, State.DONE, view.text("board.clean", "count", worked.clean()), day);
        }
        if (worked.finished() == 0) {
            return nothing(column);
        }
        return new Cell(column, State.BEGUN, view.text("board.clean-of", "count", worked.clean(), "need", need), day);
    }

    /** {@return how many clean problems of a family the strictest rule asks for, at least 1} */
    int need(String family) {
        return content.rules().stream()
                .flatMap(rule -> rule.clean().stream())
                .filter(need -> need.family().equals(family))
                .mapToInt(CleanNeed::count)
                .max()
                .orElse(1);
    }

    private Cell quiz(Column column, PersonFacts facts) {
        int days = content.rules().stream()
                .filter(rule -> rule.quiz().equals(column.of()))
                .mapToInt(QualificationRule::quizDays)
                .min()
                .orElseThrow();
        Optional<LocalDate> passed = facts.lastPassed(column.of());
        if (passed.isPresent()) {
            return dated(column, passed.get(), days, "board.passed");
        }
        return facts.lastSat(column.of())
                .map(sat -> new Cell(
                        column,
                        State.NOT_PASSED,
                        view.text("board.not-passed"),
                        view.words().day(sat)))
                .orElseGet(() -> nothing(column));
    }

    private Cell demonstration(Column column, PersonFacts facts) {
        int days = content.rules().stream()
                .filter(rule -> rule.card().equals(column.of()))
                .mapToInt(QualificationRule::lifeDays)
                .min()
                .orElseThrow();
        return facts.lastShown(column.of())
                .map(on -> dated(column, on, days, "board.signed"))
                .orElseGet(() -> nothing(column));
    }

    private Cell dated(Column column, LocalDate on, int days, String doneKey) {
        LocalDate last = on.plusDays(days);
        return last.isBefore(today)
                ? new Cell(
                        column,
                        State.RAN_OUT,
                        view.text("board.ran-out"),
                        view.words().day(last))
                : new Cell(column, State.DONE, view.text(doneKey), view.words().day(on));
    }

    private Cell nothing(Column column) {
        return new Cell(column, State.NONE, view.text("board.nothing"), "");
    }

    private Cell qualification(Column column, PersonFacts facts) {
        Standing standing = standing(column.of(), facts);
        String day = standing.findLastDay()
                .map(last -> view.text(
                        standing.status().isValid() ? "board.until" : "board.ended",
                        "day",
                        view.words().day(last)))
                .orElse("");
        String word = view.text("qualification.status." + standing.status().id());
        return new Cell(column, state(standing.status()), word, day);
    }

    Standing standing(String rule, PersonFacts facts) {
        QualificationRule found = rule(rule);
        return Judge.standing(found, facts.toFacts(found.quiz()), today);
    }

    QualificationRule rule(String id) {
        return content.rules().stream()
                .filter(rule -> rule.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static State state(Status status) {
        return switch (status) {
            case IN_TRAINING -> State.IN_TRAINING;
            case CLEARED -> State.CLEARED;
            case DUE_SOON -> State.DUE_SOON;
            case LAPSED -> State.LAPSED;
            case HELD -> State.HELD;
        };
    }

    /** {@return why, in words} */
    List<String> reasons(Standing standing) {
        return standing.reasons().stream()
                .map(finding -> say("qualification.reason." + finding.reason().id(), finding))
                .toList();
    }

    /** {@return what to do next, in words} */
    String next(Standing standing) {
        return say(
                "qualification.step." + standing.next().id(), standing.reasons().get(0));
    }

    private String say(String key, Finding finding) {
        Map<String, Object> values = new HashMap<>(finding.values());
        values.computeIfPresent("family", (name, family) -> new Word("problem.family." + family + ".title"));
        return view.text(key, values);
    }
}
