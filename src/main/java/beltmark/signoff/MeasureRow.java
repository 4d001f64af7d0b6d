package beltmark.signoff;

import org.jspecify.annotations.Nullable;

/**
 * One as-left measure in words.
 *
 * @param title what and on which side
 * @param wanted what the card asks for
 * @param measured what was measured
 * @param off by how much it is off, with its sign
 * @param allowed how far off it may be
 * @param within whether it is within
 * @param verdict that in words
 * @param slip the likely slip, or null
 */
public record MeasureRow(
        String title,
        String wanted,
        String measured,
        String off,
        String allowed,
        boolean within,
        String verdict,
        @Nullable String slip) {}
