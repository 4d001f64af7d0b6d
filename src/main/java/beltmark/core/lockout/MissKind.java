package beltmark.core.lockout;

/** In which way an option was missed. */
public enum MissKind {
    /** A wrong option was chosen. */
    CHOSEN("chosen"),
    /** A right option was left out of several. */
    LEFT_OUT("left-out"),
    /** An item was put before its turn. */
    TOO_EARLY("too-early");

    private final String id;

    MissKind(String id) {
        this.id = id;
    }

    /** {@return the name of the kind in records and text keys} */
    public String id() {
        return id;
    }
}
