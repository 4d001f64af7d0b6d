package beltmark.core.qualification;

/** Where a person stands with a qualification. */
public enum Status {
    /** A need has never been met. */
    IN_TRAINING("in-training"),
    /** Every need is met. */
    CLEARED("cleared"),
    /** Every need is met, and one runs out soon. */
    DUE_SOON("due-soon"),
    /** Every need was met, and one has run out since. */
    LAPSED("lapsed"),
    /** Held back by a person's order, whatever else is met. */
    HELD("held");

    private final String id;

    Status(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name used in text keys and style} */
    public String id() {
        return id;
    }

    /** {@return whether the person has the qualification} */
    public boolean isValid() {
        return this == CLEARED || this == DUE_SOON;
    }
}
