package beltmark.core.lockout;

/**
 * One thing wrong in a wrong answer.
 *
 * @param kind in which way
 * @param option the id of the option
 */
public record Miss(MissKind kind, String option) {}
