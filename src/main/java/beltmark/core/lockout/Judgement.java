package beltmark.core.lockout;

/** What became of an answer: right, wrong, or not answered yet and why. */
public enum Judgement {
    /** As the key has it. */
    RIGHT,
    /** Answered, but not as the key has it. */
    WRONG,
    /** Nothing is marked. */
    BLANK,
    /** More than one is marked where one is asked. */
    SEVERAL_CHOSEN,
    /** An item has no place. */
    PLACE_MISSING,
    /** Two items have the same place. */
    PLACE_TWICE,
    /** Something is marked that the question does not offer, or given a place that it does not have. */
    NOT_OFFERED;

    /** {@return whether the question is answered, right or wrong} */
    public boolean isAnswered() {
        return this == RIGHT || this == WRONG;
    }
}
