package beltmark.board;

import beltmark.content.Content;
import beltmark.core.qualification.CleanNeed;
import beltmark.core.qualification.FactKind;
import beltmark.core.qualification.Needs;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.qualification.Standing;
import beltmark.core.qualification.Status;
import beltmark.qualification.StandingWords;
import beltmark.web.View;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Says what a person has passed, column by column. */
final class Cells {

    private final View view;
    private final StandingWords words;
    private final List<QualificationRule> rules;
    private final LocalDate on;

    /**
     * @param view the words
     * @param content the rules
     * @param on the day asked about
     */
    Cells(View view, Content content, LocalDate on) {
        this.view = view;
        this.words = new StandingWords(view.words());
        this.rules = content.rules().listValid(on);
        this.on = on;
    }

    List<Cell> row(List<Column> columns, PersonFacts facts) {
        return columns.stream().map(column -> cell(column, facts)).toList();
    }

    Cell cell(Column column, PersonFacts facts) {
        return switch (column.group()) {
            case PRACTICE -> practice(column, facts);
            case QUIZ -> passed(column, facts, FactKind.QUIZ_PASSED, rule -> rule.needs().quiz().stream());
            case PAPER -> passed(column, facts, FactKind.PAPER_PASSED, rule -> rule.needs().papers().stream());
            case DEMONSTRATION -> demonstration(column, facts);
            case QUALIFICATION -> qualification(column, facts.judge().standing(column.of()));
        };
    }

    private Cell practice(Column column, PersonFacts facts) {
        int need = need(column.of());
        int clean = facts.clean(column.of());
        String day = facts.findLast(FactKind.CLEAN, column.of())
                .map(view.words()::day)
                .orElse("");
        if (clean >= need) {
            String key = clean == CleanNeed.MOST ? "board.clean-or-more" : "board.clean";
            return new Cell(column, State.DONE, view.text(key, "count", clean), day);
        }
        return facts.begun().contains(column.of())
                ? new Cell(column, State.BEGUN, view.text("board.clean-of", "count", clean, "need", need), day)
                : nothing(column);
    }

    /** {@return how many clean problems of a family the strictest rule asks for, at least 1} */
    private int need(String family) {
        return rules.stream()
                .flatMap(rule -> rule.needs().clean().stream())
                .filter(need -> need.family().equals(family))
                .mapToInt(CleanNeed::count)
                .max()
                .orElse(1);
    }

    private Cell passed(
            Column column, PersonFacts facts, FactKind kind, Function<QualificationRule, Stream<Needs.Pass>> needs) {
        int days = rules.stream()
                .flatMap(needs)
                .filter(need -> need.id().equals(column.of()))
                .mapToInt(Needs.Pass::days)
                .min()
                .orElseThrow();
        Optional<LocalDate> passed = facts.findLast(kind, column.of());
        if (passed.isPresent()) {
            return dated(column, passed.get(), days, "board.passed");
        }
        return Optional.ofNullable(facts.sat().get(column.of()))
                .map(sat -> new Cell(
                        column,
                        State.NOT_PASSED,
                        view.text("board.not-passed"),
                        view.words().day(sat)))
                .orElseGet(() -> nothing(column));
    }

    private Cell demonstration(Column column, PersonFacts facts) {
        int days = rules.stream()
                .filter(rule -> rule.card().filter(column.of()::equals).isPresent())
                .flatMap(rule -> rule.needs().demonstrations().stream())
                .mapToInt(Needs.Demonstrations::days)
                .min()
                .orElseThrow();
        return facts.findLast(FactKind.DEMONSTRATION, column.of())
                .map(shown -> dated(column, shown, days, "board.signed"))
                .orElseGet(() -> nothing(column));
    }

    private Cell dated(Column column, LocalDate done, int days, String doneKey) {
        LocalDate last = done.plusDays(days);
        return last.isBefore(on)
                ? new Cell(
                        column,
                        State.RAN_OUT,
                        view.text("board.ran-out"),
                        view.words().day(last))
                : new Cell(column, State.DONE, view.text(doneKey), view.words().day(done));
    }

    private Cell nothing(Column column) {
        return new Cell(column, State.NONE, view.text("board.nothing"), "");
    }

    private Cell qualification(Column column, Standing standing) {
        return new Cell(column, state(standing.status()), words.status(standing), words.day(standing));
    }

    QualificationRule rule(String id) {
        return rules.stream().filter(rule -> rule.id().equals(id)).findFirst().orElseThrow();
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
}
