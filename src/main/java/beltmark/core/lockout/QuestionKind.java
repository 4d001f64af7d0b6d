package beltmark.core.lockout;

/** What a question asks the person to do with its options. */
public enum QuestionKind {
    /** Choose one. */
    CHOICE("choice"),
    /** Choose every one that is right, at least one and perhaps all. */
    SEVERAL_OF("several-of"),
    /** Give each its place, first to last. */
    PUT_IN_ORDER("put-in-order"),
    /** Give each row one target of every column, such as each energy its control and its verification. */
    MATCH("match"),
    /** Choose every right spot on a drawing, at least one. */
    SPOTS("spots");

    private final String id;

    QuestionKind(String id) {
        this.id = id;
    }

    /** {@return whether options are ticked, any number of them} */
    public boolean isSeveral() {
        return this == SEVERAL_OF || this == SPOTS;
    }

    /** {@return the name of the kind in content files, records and text keys} */
    public String id() {
        return id;
    }
}
