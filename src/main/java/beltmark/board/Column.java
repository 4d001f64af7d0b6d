package beltmark.board;

import beltmark.content.Content;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.qualification.QualificationRule;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A column of the board.
 *
 * @param group what kind of thing it shows
 * @param of the id of the family, quiz, hardware card or rule
 */
public record Column(Group group, String of) {

    /** What a column shows. */
    public enum Group {
        /** Problems of a family, worked clean. */
        PRACTICE("practice"),
        /** A quiz. */
        QUIZ("quiz"),
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

    /** {@return the columns, in the order of the board} */
    static List<Column> all(Content content) {
        List<Column> columns = new ArrayList<>();
        // first the answer, then what it hangs on: on a phone the first columns are the ones in sight
        content.rules().forEach(rule -> columns.add(new Column(Group.QUALIFICATION, rule.id())));
        content.families().stream()
                .map(ProblemFamily::id)
                .forEach(family -> columns.add(new Column(Group.PRACTICE, family)));
        content.rules().stream()
                .map(QualificationRule::quiz)
                .distinct()
                .forEach(quiz -> columns.add(new Column(Group.QUIZ, quiz)));
        Stream<String> cards =
                content.rules().stream().map(QualificationRule::card).distinct();
        cards.forEach(card -> columns.add(new Column(Group.DEMONSTRATION, card)));
        return List.copyOf(columns);
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
            case DEMONSTRATION, QUALIFICATION -> "hardware.name." + of;
        };
    }
}
