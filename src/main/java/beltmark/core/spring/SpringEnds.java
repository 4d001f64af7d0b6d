package beltmark.core.spring;

/**
 * How the ends of a compression spring are made (Shigley's Mechanical Engineering Design, table 10-1, seen second-hand):
 * how many coils do not work, and what length the coils take when they touch. Nt = Na + Ne.
 */
public enum SpringEnds {
    /** Cut off: Ne = 0, Ls = d (Nt + 1), L0 = p Na + d. */
    PLAIN(0, 1, 0, 1),
    /** Cut off and ground: Ne = 1, Ls = d Nt, L0 = p (Na + 1). */
    PLAIN_GROUND(1, 0, 1, 0),
    /** Closed (squared): Ne = 2, Ls = d (Nt + 1), L0 = p Na + 3 d. */
    SQUARED(2, 1, 0, 3),
    /** Closed and ground: Ne = 2, Ls = d Nt, L0 = p Na + 2 d. */
    SQUARED_GROUND(2, 0, 0, 2);

    private final int inactiveCoils;
    private final int extraSolidWires;
    private final int extraPitches;
    private final int extraFreeWires;

    SpringEnds(int inactiveCoils, int extraSolidWires, int extraPitches, int extraFreeWires) {
        this.inactiveCoils = inactiveCoils;
        this.extraSolidWires = extraSolidWires;
        this.extraPitches = extraPitches;
        this.extraFreeWires = extraFreeWires;
    }

    /** {@return how many coils do not work, Ne, 0..2} */
    public int inactiveCoils() {
        return inactiveCoils;
    }

    /** {@return how many wires lie on each other at solid length, not necessarily whole} */
    public double wiresAtSolid(double activeCoils) {
        return activeCoils + inactiveCoils + extraSolidWires;
    }

    /** {@return how many pitches the free length has} */
    double pitchesInFree(double activeCoils) {
        return activeCoils + extraPitches;
    }

    /** {@return how many wire diameters the free length has beside its pitches} */
    int wiresInFree() {
        return extraFreeWires;
    }

    /** {@return the lower-case name with hyphens, used in content files and on the command line} */
    public String id() {
        return switch (this) {
            case PLAIN -> "plain";
            case PLAIN_GROUND -> "plain-ground";
            case SQUARED -> "squared";
            case SQUARED_GROUND -> "squared-ground";
        };
    }
}
