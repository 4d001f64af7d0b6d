package beltmark.core.lockout;

/** In which way an option was missed. */
public enum MissKind {
    /** A wrong option was chosen. */
    CHOSEN,
    /** A right option was left out of several. */
    LEFT_OUT,
    /** An item was put before its turn. */
    TOO_EARLY
}
