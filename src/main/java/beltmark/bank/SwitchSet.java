package beltmark.bank;

/**
 * Body of the records {@code lockout.source-confirmed} and {@code lockout.question-retired}.
 *
 * @param question the id of the question
 * @param on whether it is set, or taken back
 * @param mark how well the source is known
 * @param source the paragraph
 */
record SwitchSet(String question, boolean on, String mark, String source) {}
