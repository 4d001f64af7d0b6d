package beltmark.signoff;

/**
 * On what somebody was assessor of a hardware on a day.
 *
 * @param word {@code qualified} or {@code appointed}
 * @param record the record of the appointment, 0 when qualified
 */
public record Basis(String word, long record) {

    /** The assessor holds the qualification on that hardware. */
    static final Basis QUALIFIED = new Basis("qualified", 0);

    static Basis appointed(long record) {
        return new Basis("appointed", record);
    }

    /** {@return whether an appointment stands for the qualification} */
    public boolean isAppointed() {
        return record > 0;
    }
}
