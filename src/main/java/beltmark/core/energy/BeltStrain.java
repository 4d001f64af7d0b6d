package beltmark.core.energy;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Energy;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.LineLoad;
import beltmark.core.units.PreciseLength;

/**
 * What a tensioned belt stores: U = L (T1^2 + T1 T2 + T2^2)/(6 E A), stretched by L (T1 + T2)/(2 E A), when its tension goes
 * evenly from T1 to T2; E A is the belt modulus in N/mm times the width. Source: Hibbeler, Mechanics of Materials,
 * section 14.1 for an even tension (seen in a companion); the taper own derivation.
 *
 * @param energy U
 * @param stretch of the whole length
 */
public record BeltStrain(Energy energy, PreciseLength stretch) {

    private static final double MILLIMETRES_PER_METRE = 1000;

    /**
     * The belt.
     *
     * @param length that is tensioned L, above 0
     * @param modulus of the belt per width, above 0; 1500..8000 N/mm is usual
     * @param width of the belt, above 0
     */
    public record Belt(Length length, LineLoad modulus, Length width) {

        public Belt {
            Limits.positive("length", length);
            Limits.positive("modulus", modulus);
            Limits.positive("width", width);
        }

        private double stiffnessNewtons() {
            return modulus.newtonsPerMillimetre() * width.millimetres();
        }
    }

    /**
     * Finds both.
     *
     * @param first the tension at one end T1, not negative
     * @param second the tension at the other end T2, not negative
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<BeltStrain> of(Belt belt, Force first, Force second) {
        double t1 = Limits.notNegative("firstTension", first).newtons();
        double t2 = Limits.notNegative("secondTension", second).newtons();
        double stiffness = belt.stiffnessNewtons();
        double squares = t1 * t1 + t1 * t2 + t2 * t2;
        double metres = belt.length.millimetres() / MILLIMETRES_PER_METRE;
        BeltStrain strain = new BeltStrain(
                new Energy(metres * squares / (6 * stiffness)),
                new PreciseLength(belt.length.millimetres() * (t1 + t2) / (2 * stiffness)));
        return Solution.of(
                strain,
                Step.of("belt-stiffness", "modulus", belt.modulus)
                        .with("width", belt.width)
                        .with("stiffness", new Force(stiffness)),
                Step.of("belt-strain-energy", "length", belt.length)
                        .with("first", first)
                        .with("second", second)
                        .with("energy", strain.energy),
                Step.of("belt-stretch", "length", belt.length)
                        .with("first", first)
                        .with("second", second)
                        .with("stretch", strain.stretch));
    }
}
