package beltmark.sheet;

/**
 * One measure of the table to work from, on both sides.
 *
 * @param label what is measured
 * @param left on the left, in the reader's unit
 * @param leftOther the same in the other unit
 * @param right on the right, in the reader's unit
 * @param rightOther the same in the other unit
 * @param tolerance how far an as-left measure may be off; empty where nothing is asked for
 */
public record Row(String label, String left, String leftOther, String right, String rightOther, String tolerance) {}
