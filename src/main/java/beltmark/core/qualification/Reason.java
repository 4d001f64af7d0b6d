package beltmark.core.qualification;

/** Why a person stands where they do; each has one sentence in the text files. */
public enum Reason {
    /** Held back; {@code since}. */
    HELD("held", NextStep.CLEAR_HOLD),
    /** Too few clean problems of a family; {@code family}, {@code have}, {@code need}. */
    TOO_FEW_CLEAN("too-few-clean", NextStep.PRACTISE),
    /** The quiz was never passed. */
    QUIZ_NOT_PASSED("quiz-not-passed", NextStep.PASS_QUIZ),
    /** The quiz was passed too long ago; {@code lastDay}, the last on which it counted. */
    QUIZ_RAN_OUT("quiz-ran-out", NextStep.PASS_QUIZ),
    /** The quiz counts for a little longer; {@code lastDay}. */
    QUIZ_RUNS_OUT("quiz-runs-out", NextStep.PASS_QUIZ),
    /** Too few demonstrations signed by another person count on the day; {@code have}, {@code need}. */
    TOO_FEW_DEMONSTRATIONS("too-few-demonstrations", NextStep.DEMONSTRATE),
    /** The demonstrations were too long ago; {@code lastDay}, the last on which they counted. */
    DEMONSTRATION_RAN_OUT("demonstration-ran-out", NextStep.DEMONSTRATE),
    /** The demonstrations count for a little longer; {@code lastDay}. */
    DEMONSTRATION_RUNS_OUT("demonstration-runs-out", NextStep.DEMONSTRATE),
    /** All needs are met; {@code lastDay}, the last on which they are. */
    ALL_MET("all-met", NextStep.NONE);

    private final String id;
    private final NextStep step;

    Reason(String id, NextStep step) {
        this.id = id;
        this.step = step;
    }

    /** {@return the hyphenated name used in text keys} */
    public String id() {
        return id;
    }

    /** {@return what to do about it} */
    public NextStep step() {
        return step;
    }
}
