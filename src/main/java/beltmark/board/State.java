package beltmark.board;

/** What a cell says, with the sign that goes before its word. */
public enum State {
    /** Nothing there. */
    NONE("none", "–"),
    /** Some, not yet enough. */
    BEGUN("begun", "…"),
    /** Passed, clean or signed. */
    DONE("done", "✓"),
    /** Tried and not passed. */
    NOT_PASSED("not-passed", "✕"),
    /** Passed too long ago. */
    RAN_OUT("ran-out", "✕"),
    /** In training for the qualification. */
    IN_TRAINING("in-training", "…"),
    /** Qualified. */
    CLEARED("cleared", "✓"),
    /** Qualified, and not for much longer. */
    DUE_SOON("due-soon", "!"),
    /** No longer qualified. */
    LAPSED("lapsed", "✕"),
    /** Held back. */
    HELD("held", "■");

    private final String id;
    private final String sign;

    State(String id, String sign) {
        this.id = id;
        this.sign = sign;
    }

    /** {@return the word used in text keys and style} */
    public String id() {
        return id;
    }

    /** {@return the sign} */
    public String sign() {
        return sign;
    }
}
