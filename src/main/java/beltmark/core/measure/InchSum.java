package beltmark.core.measure;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Graduated;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;

/** Adds, takes off and halves inches and sixteenths as one does on paper: exact, with the steps in fractions. */
public final class InchSum {

    private static final Graduation SIXTEENTHS = Graduation.SIXTEENTH_INCH;

    private InchSum() {}

    /** {@return both together; lengths are not negative and lie on sixteenths; throws {@link Refused} OUT_OF_RANGE} */
    public static Solution<Length> plus(Length first, Length second) {
        Length sum = Limits.notNegative("first", first).plus(Limits.notNegative("second", second));
        return Solution.of(sum, common(first, second), step("inches-added", first, second, "sum", sum));
    }

    /** {@return the first less the second, which is not the larger one; throws {@link Refused} OUT_OF_RANGE} */
    public static Solution<Length> minus(Length first, Length second) {
        Length difference = Limits.notNegative("first", first).minus(Limits.notNegative("second", second));
        Limits.notNegative("difference", difference);
        Step taken = step("inches-taken-off", first, second, "difference", difference);
        if (!borrows(first, second)) {
            return Solution.of(difference, common(first, second), taken);
        }
        Step borrowed = Step.of("inch-borrowed", "first", new Graduated(first, SIXTEENTHS))
                .with("whole", Ratio.of(wholes(first) - 1))
                .with("over", Ratio.of(sixteenths(first) + SIXTEENTHS.perUnit()));
        return Solution.of(difference, common(first, second), borrowed, taken);
    }

    /** {@return the half, exactly; throws {@link Refused} OUT_OF_RANGE} */
    public static Solution<Length> half(Length whole) {
        Length half = Limits.notNegative("whole", whole).times(0.5);
        return Solution.of(
                half,
                Step.of("inches-halved", "whole", new Graduated(whole, SIXTEENTHS))
                        .with("half", new Graduated(half, SIXTEENTHS)));
    }

    /** {@return whether the fraction of the second is larger, so that an inch has to be borrowed} */
    public static boolean borrows(Length first, Length second) {
        return sixteenths(first) < sixteenths(second);
    }

    /** {@return whether the two fractions make an inch or more, so that one is carried} */
    public static boolean carries(Length first, Length second) {
        return sixteenths(first) + sixteenths(second) >= SIXTEENTHS.perUnit();
    }

    private static Step common(Length first, Length second) {
        return Step.of("inches-common", "first", Ratio.of(sixteenths(first)))
                .with("second", Ratio.of(sixteenths(second)));
    }

    private static Step step(String id, Length first, Length second, String found, Length result) {
        return Step.of(id, "first", new Graduated(first, SIXTEENTHS))
                .with("second", new Graduated(second, SIXTEENTHS))
                .with(found, new Graduated(result, SIXTEENTHS));
    }

    private static int wholes(Length length) {
        return Math.toIntExact(length.nanometres() / LengthUnit.INCH.nanometres());
    }

    private static int sixteenths(Length length) {
        Length rest = length.minus(Length.ofInches(wholes(length)));
        return Math.toIntExact(rest.nanometres() / SIXTEENTHS.step().nanometres());
    }
}
