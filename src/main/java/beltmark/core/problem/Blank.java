package beltmark.core.problem;

import java.util.List;

/** One thing to fill in. */
public sealed interface Blank permits LengthBlank, NumberBlank, ChoiceBlank, SeveralBlank, OrderBlank, MatchBlank {

    /** {@return the name within its part, lower case} */
    String id();

    /** {@return the right answer} */
    Answer right();

    /** {@return the known wrong answers, each with the slip that leads to it} */
    List<WrongAnswer> wrongAnswers();

    /** {@return whether nothing but the right answer can be taken for it, nor one slip for another} */
    boolean isFair();

    /** {@return how likely somebody is to hit the right answer who does not know it, 0..1 (site policy, no measurement)} */
    double guess();

    /**
     * An answer that a known wrong way of working leads to.
     *
     * @param slip the slip's id
     * @param answer the answer
     */
    record WrongAnswer(String slip, Answer answer) {}

    /** {@return wrong answers that are neither the right one nor each other} */
    static boolean areDistinct(Answer right, List<WrongAnswer> wrong) {
        List<Answer> answers = wrong.stream().map(WrongAnswer::answer).toList();
        return !answers.contains(right) && answers.stream().distinct().count() == answers.size();
    }
}
