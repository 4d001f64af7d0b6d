package beltmark.practice;

/**
 * The body of a {@code practice.leaving}: a part was left without being right.
 *
 * @param family the family's id
 * @param version the family's version
 * @param code the problem's code
 * @param part the part's id
 * @param how {@code own-figure} or {@code steps-shown}
 */
public record LeavingRecord(String family, int version, String code, String part, String how) {}
