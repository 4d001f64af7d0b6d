package beltmark.signoff;

/** Why a demonstration is not signed; each has one sentence in the text files. Nothing is stored then. */
public enum Refusal {
    /** The person would sign off themselves. */
    SELF("self"),
    /** On that day the person was no assessor on that hardware. */
    NOT_ASSESSOR("not-assessor"),
    /** A measure is off by more than is allowed, and neither corrected nor explained. */
    OUT_OF_TOLERANCE("out-of-tolerance"),
    /** The day lies ahead, or too far back. */
    DAY("day"),
    /** What was typed is no PIN; no try was taken. */
    PIN_NOT_SIX_DIGITS("pin-not-six-digits"),
    /** The PIN is not right, or locked. */
    WRONG_PIN("wrong-pin"),
    /** This form was signed before, with other figures. */
    SIGNED_OTHERWISE("signed-otherwise");

    private final String id;

    Refusal(String id) {
        this.id = id;
    }

    String id() {
        return id;
    }
}
