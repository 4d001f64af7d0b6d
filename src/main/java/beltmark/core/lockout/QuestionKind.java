package beltmark.core.lockout;

/** What a question asks the person to do with its options. */
public enum QuestionKind {
    /** Choose one. */
    CHOICE,
    /** Choose every one that is right, at least one and perhaps all. */
    SEVERAL_OF,
    /** Give each its place, first to last. */
    PUT_IN_ORDER
}
