package beltmark.board;

import beltmark.content.Content;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.qualification.Needs;
import beltmark.core.qualification.QualificationRule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A column of the board.
 *
 * @param group what kind of thing it shows
 * @param of the id of the family, quiz, paper, hardware card or qualification
 */
public record Column(Group group, String of) {

    /** What a column shows. */
    public enum Group {
        /** Problems of a family, worked clean. */
        PRACTICE("practice"),
        /** A quiz. */
        QUIZ("quiz"),
        /** A paper. */
        PAPER("paper"),
        /** Demonstrations on a hardware card. */
        DEMONSTRATION("demonstration"),
        /** Where a person stands by a rule. */
        QUALIFICATION("qualification");

        private final String id;

        Group(String id) {
            this.id = id;
        }

        /** {@return the word used in text keys and addresses} */
        public String id() {
            return id;
        }
    }

    /** {@return the columns by the rules of a day, in the order of the board} */
    static List<Column> all(Content content, LocalDate on) {
        List<QualificationRule> rules = content.rules().listValid(on);
        Stream<String> families = content.families().stream().map(ProblemFamily::id);
        return list(rules, families);
    }

    /** {@return the columns that matter for one hardware card: what it hangs on, and what hangs on no card} */
    static List<Column> forCard(Content content, LocalDate on, String card) {
        List<QualificationRule> rules = content.rules().listValid(on).stream()
                .filter(rule -> rule.card().isEmpty() || rule.card().get().equals(card))
                .toList();
        Stream<String> families = content.families().stream()
                .map(ProblemFamily::id)
                .filter(id -> rules.stream()
                        .flatMap(rule -> rule.needs().clean().stream())
                        .anyMatch(need -> need.family().equals(id)));
        return list(rules, families);
    }

    private static List<Column> list(List<QualificationRule> rules, Stream<String> families) {
        List<Column> columns = new ArrayList<>();
        // first the answer, then what it hangs on: on a phone the first columns are the ones in sight
        rules.forEach(rule -> columns.add(new Column(Group.QUALIFICATION, rule.id())));
        families.forEach(family -> columns.add(new Column(Group.PRACTICE, family)));
        add(columns, Group.QUIZ, rules, rule -> rule.needs().quiz().stream().map(Needs.Pass::id));
        add(columns, Group.PAPER, rules, rule -> rule.needs().papers().stream().map(Needs.Pass::id));
        add(
                columns,
                Group.DEMONSTRATION,
                rules,
                rule -> rule.needs().demonstrations().stream().flatMap(shown -> rule.card().stream()));
        return List.copyOf(columns);
    }

    private static void add(
            List<Column> columns,
            Group group,
            List<QualificationRule> rules,
            Function<QualificationRule, Stream<String>> ids) {
        rules.stream().flatMap(ids).distinct().forEach(id -> columns.add(new Column(group, id)));
    }

    /** {@return the last part of the address of its evidence} */
    public String id() {
        return group.id() + "-" + of;
    }

    /** {@return the key of its heading} */
    public String titleKey() {
        return switch (group) {
            case PRACTICE -> "problem.family." + of + ".title";
            case QUIZ -> "board.quiz." + of;
            case PAPER -> "qualification.paper." + of;
            case DEMONSTRATION -> "hardware.name." + of;
            case QUALIFICATION -> "qualification.name." + of;
        };
    }
}
