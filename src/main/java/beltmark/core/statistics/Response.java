package beltmark.core.statistics;

/** What became of one item for one person. */
public enum Response {
    /** Answered right. */
    RIGHT,
    /** Answered, not right. */
    WRONG,
    /** Left blank: wrong for the score, and the person is not counted among those who met the item. */
    NOT_REACHED
}
