package beltmark.core.lockout;

import java.util.List;

/** The one place for example questions. */
final class SampleQuiz {

    static final Source SOURCE = new Source(List.of("Q017"), "29 CFR 1910.147(b)", List.of("osha-gi"));

    private SampleQuiz() {}

    static Question choice(String id, boolean critical) {
        return new Question(id, QuestionKind.CHOICE, critical, List.of("a", "b", "c", "d"), List.of("b"), SOURCE);
    }

    static Question severalOf(String id) {
        return new Question(id, QuestionKind.SEVERAL_OF, false, List.of("a", "b", "c", "d"), List.of("a", "c"), SOURCE);
    }

    static Question order(String id) {
        return new Question(
                id, QuestionKind.PUT_IN_ORDER, false, List.of("a", "b", "c"), List.of("c", "a", "b"), SOURCE);
    }

    /** Five questions, two of them critical; 80 percent are four right answers. */
    static Quiz quiz() {
        return new Quiz(
                "lockout",
                1,
                80,
                List.of(choice("q1", true), choice("q2", true), choice("q3", false), severalOf("q4"), order("q5")));
    }
}
