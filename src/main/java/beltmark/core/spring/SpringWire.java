package beltmark.core.spring;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Pressure;

/**
 * Spring wires and how strong they are: Sut = A/d^m in MPa with the wire diameter d in mm, and the share of it that may
 * be borne in static shear. Source: Shigley's Mechanical Engineering Design, tables 10-4 to 10-6 (seen second-hand); the
 * ranges of d from memory, except that of chrome-silicon.
 */
public enum SpringWire {
    /** Music wire, ASTM A228. */
    MUSIC("music", 2211, 0.145, 0.10, 6.5, 82_000),
    /** Oil-tempered wire, ASTM A229. */
    OIL_TEMPERED("oil-tempered", 1855, 0.187, 0.5, 12.7, 77_200),
    /** Hard-drawn wire, ASTM A227. */
    HARD_DRAWN("hard-drawn", 1783, 0.190, 0.7, 12.7, 80_000),
    /** Chrome-vanadium wire, ASTM A232. */
    CHROME_VANADIUM("chrome-vanadium", 2005, 0.168, 0.8, 11.1, 77_200),
    /** Chrome-silicon wire, ASTM A401. */
    CHROME_SILICON("chrome-silicon", 1974, 0.108, 1.6, 9.5, 77_200);

    private final String id;
    private final double coefficient;
    private final double exponent;
    private final double thinnest;
    private final double thickest;
    private final double shearModulusMegapascals;

    SpringWire(
            String id,
            double coefficient,
            double exponent,
            double thinnest,
            double thickest,
            double shearModulusMegapascals) {
        this.id = id;
        this.coefficient = coefficient;
        this.exponent = exponent;
        this.thinnest = thinnest;
        this.thickest = thickest;
        this.shearModulusMegapascals = shearModulusMegapascals;
    }

    /** {@return the lower-case name used in content files and on the command line} */
    public String id() {
        return id;
    }

    /** {@return the modulus of rigidity G; music and hard-drawn wire: about the middle of the published range} */
    public Pressure shearModulus() {
        return new Pressure(shearModulusMegapascals);
    }

    /**
     * Finds the tensile strength.
     *
     * @param wire the wire diameter d, above 0
     * @return Sut; with WIRE_OUTSIDE_TABLE where d is outside the published range
     * @throws Refused OUT_OF_RANGE
     */
    public Solution<Pressure> tensileStrength(Length wire) {
        Limits.positive("wire", wire);
        double d = wire.millimetres();
        Pressure strength = new Pressure(coefficient / Math.pow(d, exponent));
        return Solution.of(strength, Step.of("tensile-strength", "wire", wire).with("strength", strength))
                .warnIf(Limits.isOutside(d, thinnest, thickest), Warning.WIRE_OUTSIDE_TABLE);
    }

    /**
     * Finds what the wire may bear in static shear: of Sut, 45 % (music, hard-drawn) or 50 % (tempered and alloy) as wound;
     * after presetting the low end of 60-70 % and 65-75 %.
     *
     * @param wire the wire diameter d, above 0
     * @param preset whether the spring was preset
     * @return the allowable stress
     */
    public Solution<Pressure> allowableShear(Length wire, boolean preset) {
        Solution<Pressure> tensile = tensileStrength(wire);
        Pressure allowable = new Pressure(tensile.result().megapascals() * share(preset));
        return Solution.of(
                        allowable,
                        Step.of("allowable-shear", "strength", tensile.result()).with("allowable", allowable))
                .after(tensile);
    }

    private double share(boolean preset) {
        boolean coldDrawn = this == MUSIC || this == HARD_DRAWN;
        if (preset) {
            return coldDrawn ? 0.60 : 0.65;
        }
        return coldDrawn ? 0.45 : 0.50;
    }
}
