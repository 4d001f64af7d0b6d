package beltmark.lockout;

/** What was done with an answer that came in. */
public enum Taken {
    /** It is recorded. */
    RECORDED,
    /** The same form came before and is recorded already. */
    REPEATED,
    /** Another form answered the question before; that answer stands. */
    ALREADY_ANSWERED,
    /** An earlier question has to be answered first. */
    NOT_ITS_TURN,
    /** The question was not answered, so nothing is recorded. */
    NOT_ANSWERED
}
