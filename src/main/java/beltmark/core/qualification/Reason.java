package beltmark.core.qualification;

/** Why a person stands where they do; each has one sentence in the text files. */
public enum Reason {
    /** Held back; {@code since}. */
    HELD("held", NextStep.CLEAR_HOLD),
    /** Held back by an event; {@code event}, {@code since}. */
    HELD_BY_EVENT("held-by-event", NextStep.CLEAR_HOLD),
    /** Too few clean problems of a family; {@code family}, {@code have}, {@code need}. */
    TOO_FEW_CLEAN("too-few-clean", NextStep.PRACTISE),
    /** The quiz was never passed. */
    QUIZ_NOT_PASSED("quiz-not-passed", NextStep.PASS_QUIZ),
    /** The quiz was passed too long ago; {@code lastDay}, the last on which it counted. */
    QUIZ_RAN_OUT("quiz-ran-out", NextStep.PASS_QUIZ),
    /** The quiz counts for a little longer; {@code lastDay}. */
    QUIZ_RUNS_OUT("quiz-runs-out", NextStep.PASS_QUIZ),
    /** Something happened after which the quiz must be passed again; {@code event}, {@code since}. */
    QUIZ_AFTER_EVENT("quiz-after-event", NextStep.PASS_QUIZ),
    /** A paper was never passed; {@code paper}. */
    PAPER_NOT_PASSED("paper-not-passed", NextStep.PASS_PAPER),
    /** A paper was passed too long ago; {@code paper}, {@code lastDay}. */
    PAPER_RAN_OUT("paper-ran-out", NextStep.PASS_PAPER),
    /** A paper counts for a little longer; {@code paper}, {@code lastDay}. */
    PAPER_RUNS_OUT("paper-runs-out", NextStep.PASS_PAPER),
    /** Something happened after which a paper must be passed again; {@code paper}, {@code event}, {@code since}. */
    PAPER_AFTER_EVENT("paper-after-event", NextStep.PASS_PAPER),
    /** Another qualification is not valid on the day; {@code qualification}. */
    PREREQUISITE_MISSING("prerequisite-missing", NextStep.QUALIFY_FIRST),
    /** Another qualification is valid for a little longer; {@code qualification}, {@code lastDay}. */
    PREREQUISITE_RUNS_OUT("prerequisite-runs-out", NextStep.QUALIFY_FIRST),
    /** Too few demonstrations signed by another person count on the day; {@code have}, {@code need}. */
    TOO_FEW_DEMONSTRATIONS("too-few-demonstrations", NextStep.DEMONSTRATE),
    /** The demonstrations were too long ago; {@code lastDay}, the last on which they counted. */
    DEMONSTRATION_RAN_OUT("demonstration-ran-out", NextStep.DEMONSTRATE),
    /** The demonstrations count for a little longer; {@code lastDay}. */
    DEMONSTRATION_RUNS_OUT("demonstration-runs-out", NextStep.DEMONSTRATE),
    /** Something happened after which demonstrations must be shown again; {@code event}, {@code since}. */
    DEMONSTRATION_AFTER_EVENT("demonstration-after-event", NextStep.DEMONSTRATE),
    /** Nothing has been on record for long; {@code lastDay}, the last on which that does no harm. */
    ABSENCE_NEAR("absence-near", NextStep.WORK_AGAIN),
    /** A new version of the rule begins, by which not all is met; {@code lastDay}, the last of the present one. */
    NEW_RULE("new-rule", NextStep.MEET_NEW_RULE),
    /** No version of the rule is valid on the day. */
    NO_RULE("no-rule", NextStep.NONE),
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
