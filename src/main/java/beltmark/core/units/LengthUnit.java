package beltmark.core.units;

/** The units a length may be typed in. */
public enum LengthUnit {
    /** The inch: 25.4 mm exactly (NIST SP 811, appendix B; the factor itself from memory). */
    INCH("in", 25_400_000),
    /** The millimetre. */
    MILLIMETRE("mm", 1_000_000);

    private final String symbol;
    private final long nanometres;

    LengthUnit(String symbol, long nanometres) {
        this.symbol = symbol;
        this.nanometres = nanometres;
    }

    /** {@return the printed symbol, without a full stop} */
    public String symbol() {
        return symbol;
    }

    /** {@return how many nanometres one of this unit has, exactly} */
    public long nanometres() {
        return nanometres;
    }
}
