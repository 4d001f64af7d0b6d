package beltmark.core.lockout;

/** What became of an answer: right, wrong, or not answered yet and why. */
public enum Judgement {
    /** As the key has it. */
    RIGHT("right"),
    /** Answered, but not as the key has it. */
    WRONG("wrong"),
    /** Nothing is marked. */
    BLANK("blank"),
    /** More than one is marked where one is asked. */
    SEVERAL_CHOSEN("several-chosen"),
    /** An item has no place. */
    PLACE_MISSING("place-missing"),
    /** Two items have the same place. */
    PLACE_TWICE("place-twice"),
    /** A row of a match lacks a target. */
    MATCH_MISSING("match-missing"),
    /** Something is marked that the question does not offer, or given a place that it does not have. */
    NOT_OFFERED("not-offered");

    private final String id;

    Judgement(String id) {
        this.id = id;
    }

    /** {@return the name of the judgement in records and text keys} */
    public String id() {
        return id;
    }

    /** {@return whether the question is answered, right or wrong} */
    public boolean isAnswered() {
        return this == RIGHT || this == WRONG;
    }
}
