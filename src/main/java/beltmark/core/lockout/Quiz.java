package beltmark.core.lockout;

import java.util.List;

/**
 * A version of a quiz. Every person gets every question; only the order differs from sitting to sitting.
 *
 * @param id the name of the quiz
 * @param version 1, 2, … ; a question or key that changes makes a new version
 * @param passPercent the share of right answers that passes, 1..100 percent; no rule names one, it is site policy
 * @param questions the questions, at least one, each id once
 */
public record Quiz(String id, int version, int passPercent, List<Question> questions) {

    private static final int WHOLE = 100;

    /** Refuses an empty quiz, a pass mark out of range and two questions of the same id. */
    public Quiz {
        questions = List.copyOf(questions);
        if (questions.isEmpty() || version < 1 || passPercent < 1 || passPercent > WHOLE) {
            throw new IllegalArgumentException("quiz " + id + " version " + version + ", pass mark " + passPercent
                    + " %, " + questions.size() + " questions");
        }
        if (questions.stream().map(Question::id).distinct().count() < questions.size()) {
            throw new IllegalArgumentException("quiz " + id + " has two questions of the same id");
        }
    }

    /** {@return how many right answers pass: the pass mark of all questions, rounded up to a whole question} */
    public int neededToPass() {
        return (questions.size() * passPercent + WHOLE - 1) / WHOLE;
    }

    /** {@return the question of that id} */
    public Question question(String id) {
        return questions.stream()
                .filter(question -> question.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("quiz " + this.id + " has no question " + id));
    }
}
