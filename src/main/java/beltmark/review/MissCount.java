package beltmark.review;

/**
 * How often one option was missed in one way.
 *
 * @param question the id of the question
 * @param kind in which way: {@code chosen}, {@code left-out} or {@code too-early}
 * @param option the id of the option
 * @param times how often
 */
record MissCount(String question, String kind, String option, long times) {}
