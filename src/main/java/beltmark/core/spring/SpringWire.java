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
    MUSIC("music", 2211, 0.145, 0.10, 6.5, Moduli.MUSIC),
    /** Oil-tempered wire, ASTM A229. */
    OIL_TEMPERED("oil-tempered", 1855, 0.187, 0.5, 12.7, Moduli.ALLOY),
    /** Hard-drawn wire, ASTM A227. */
    HARD_DRAWN("hard-drawn", 1783, 0.190, 0.7, 12.7, Moduli.HARD_DRAWN),
    /** Chrome-vanadium wire, ASTM A232. */
    CHROME_VANADIUM("chrome-vanadium", 2005, 0.168, 0.8, 11.1, Moduli.ALLOY),
    /** Chrome-silicon wire, ASTM A401. */
    CHROME_SILICON("chrome-silicon", 1974, 0.108, 1.6, 9.5, Moduli.ALLOY);

    private final String id;
    private final double coefficient;
    private final double exponent;
    private final double thinnest;
    private final double thickest;
    private final Moduli moduli;

    SpringWire(String id, double coefficient, double exponent, double thinnest, double thickest, Moduli moduli) {
        this.id = id;
        this.coefficient = coefficient;
        this.exponent = exponent;
        this.thinnest = thinnest;
        this.thickest = thickest;
        this.moduli = moduli;
    }

    /** {@return the lower-case name used in content files and on the command line} */
    public String id() {
        return id;
    }

    /**
     * Finds the modulus of rigidity (Shigley's Mechanical Engineering Design, table 10-5, seen second-hand; its steps with
     * the wire diameter from memory).
     *
     * @param wire the wire diameter d, above 0
     * @return G
     * @throws Refused OUT_OF_RANGE
     */
    public Solution<Pressure> shearModulus(Length wire) {
        Limits.positive("wire", wire);
        Pressure modulus = new Pressure(moduli.at(wire.millimetres()));
        return Solution.of(modulus, Step.of("shear-modulus", "wire", wire).with("shearModulus", modulus));
    }

    /** Moduli of rigidity in MPa for wire to 0.8, to 1.6, to 3 mm, and thicker. */
    private enum Moduli {
        MUSIC(82_700, 81_700, 81_000, 80_000),
        HARD_DRAWN(80_700, 80_000, 79_300, 78_600),
        ALLOY(77_200, 77_200, 77_200, 77_200);

        private final double thin;
        private final double medium;
        private final double stout;
        private final double thick;

        Moduli(double thin, double medium, double stout, double thick) {
            this.thin = thin;
            this.medium = medium;
            this.stout = stout;
            this.thick = thick;
        }

        private double at(double wireMillimetres) {
            if (wireMillimetres < 0.8) {
                return thin;
            }
            if (wireMillimetres <= 1.6) {
                return medium;
            }
            return wireMillimetres <= 3 ? stout : thick;
        }
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
