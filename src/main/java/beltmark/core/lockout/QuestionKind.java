package beltmark.core.lockout;

/** What a question asks the person to do with its options. */
public enum QuestionKind {
    /** Choose one. */
    CHOICE("choice"),
    /** Choose every one that is right, at least one and perhaps all. */
    SEVERAL_OF("several-of"),
    /** Give each its place, first to last. */
    PUT_IN_ORDER("put-in-order");

    private final String id;

    QuestionKind(String id) {
        this.id = id;
    }

    /** {@return the name of the kind in content files, records and text keys} */
    public String id() {
        return id;
    }
}
