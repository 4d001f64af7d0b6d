package beltmark.core.units;

/** The finest division of a tape, and so the fineness to which a length is printed. */
public enum Graduation {
    /** 1/8 in. */
    EIGHTH_INCH(LengthUnit.INCH, 8),
    /** 1/16 in. */
    SIXTEENTH_INCH(LengthUnit.INCH, 16),
    /** 1/32 in. */
    THIRTY_SECOND_INCH(LengthUnit.INCH, 32),
    /** 1/64 in. */
    SIXTY_FOURTH_INCH(LengthUnit.INCH, 64),
    /** 1 mm. */
    MILLIMETRE(LengthUnit.MILLIMETRE, 1);

    private final LengthUnit unit;
    private final int perUnit;

    Graduation(LengthUnit unit, int perUnit) {
        this.unit = unit;
        this.perUnit = perUnit;
    }

    /** {@return the unit that is divided} */
    public LengthUnit unit() {
        return unit;
    }

    /** {@return into how many equal divisions the unit is divided, 1..64} */
    public int perUnit() {
        return perUnit;
    }

    /** {@return the length of one division, exactly} */
    public Length step() {
        return Length.ofNanometres(unit.nanometres() / perUnit);
    }
}
