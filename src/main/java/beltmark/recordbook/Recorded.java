package beltmark.recordbook;

/**
 * The answer to an entry.
 *
 * @param sequence the number of its record, from 1
 * @param isNew false when the operation had been recorded before; then nothing was written
 */
public record Recorded(long sequence, boolean isNew) {}
