package beltmark.signoff;

import org.jspecify.annotations.Nullable;

/**
 * One as-left measure or reading in words.
 *
 * @param id the name of what it is
 * @param title what and on which side
 * @param figures what is wanted, what was measured, and the rest that there is to say
 * @param within whether it is within
 * @param verdict that in words
 * @param slip the likely slip, or null
 * @param explanation why it stays as it is, or null
 */
public record MeasureRow(
        String id,
        String title,
        Figures figures,
        boolean within,
        String verdict,
        @Nullable String slip,
        @Nullable String explanation) {

    /**
     * The figures of a measure.
     *
     * @param wanted what is asked for
     * @param measured what was measured
     * @param off by how much it is off, with its sign; empty where there is no such thing
     * @param allowed how far off it may be; empty where there is no such thing
     */
    public record Figures(String wanted, String measured, String off, String allowed) {}
}
