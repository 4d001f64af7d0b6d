package beltmark.preview;

/**
 * What two thousand codes of a family give.
 *
 * @param family the family's id
 * @param variants how many different problems
 * @param rejected the share of draws that were unfair or impossible, 0..1
 * @param slips how many slips it knows, over all parts
 * @param answers how many different right answers its first blank has
 * @param most how often the commonest of them comes
 */
public record FamilyReport(String family, int variants, double rejected, int slips, int answers, int most) {

    private static final int WHOLE = 100;

    /** {@return the rejected draws in percent} */
    public String rejectedPercent() {
        return Math.round(WHOLE * rejected) + "\u00a0%";
    }

    /** {@return how often the commonest first answer comes, in percent} */
    public String mostPercent() {
        return Math.round(WHOLE * (double) most / Reports.CODES) + "\u00a0%";
    }
}
