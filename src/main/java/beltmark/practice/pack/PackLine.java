package beltmark.practice.pack;

import java.time.Instant;

/**
 * A pack in a list.
 *
 * @param seq its number
 * @param madeAt when
 */
public record PackLine(long seq, Instant madeAt) {}
