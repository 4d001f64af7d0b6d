package beltmark.core.lockout;

import java.util.List;
import java.util.Map;

/**
 * What came of a finished sitting: it is passed only if the score reaches the pass mark and every critical question is
 * right.
 *
 * @param right how many questions are right, 0..asked
 * @param asked how many questions the quiz has
 * @param needed how many right answers pass, 1..asked
 * @param criticalMisses the ids of the critical questions that are not right, in the order of the quiz
 */
public record QuizResult(int right, int asked, int needed, List<String> criticalMisses) {

    /** Refuses counts that cannot be. */
    public QuizResult {
        criticalMisses = List.copyOf(criticalMisses);
        if (right < 0 || right + criticalMisses.size() > asked || needed < 1 || needed > asked) {
            throw new IllegalArgumentException(right + " right of " + asked + ", " + needed + " needed, "
                    + criticalMisses.size() + " critical misses");
        }
    }

    /**
     * The result of all answers.
     *
     * @param quiz the quiz that was sat
     * @param judgements the judgement of every question by its id; a question without one counts as not right
     * @return the result
     */
    public static QuizResult of(Quiz quiz, Map<String, Judgement> judgements) {
        List<Question> missed = quiz.questions().stream()
                .filter(question -> judgements.get(question.id()) != Judgement.RIGHT)
                .toList();
        int asked = quiz.questions().size();
        return new QuizResult(
                asked - missed.size(),
                asked,
                quiz.neededToPass(),
                missed.stream().filter(Question::critical).map(Question::id).toList());
    }

    /** {@return whether enough answers are right, the critical ones aside} */
    public boolean hasScore() {
        return right >= needed;
    }

    /** {@return whether the quiz is passed; it says nothing about whether work may start} */
    public boolean passed() {
        return hasScore() && criticalMisses.isEmpty();
    }
}
