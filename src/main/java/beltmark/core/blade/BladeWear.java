package beltmark.core.blade;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Ratio;
import beltmark.core.units.SpringRate;
import beltmark.core.units.Time;

/**
 * What wear does to the load: when the tip is worn by w, both springs are w longer and N = N0 - 2 k w. The same holds for a
 * cup of height c that was left in the belt while setting and lifts flat later: N falls by 2 k c. Own derivation.
 */
public final class BladeWear {

    private static final double HOURS = 1000;

    private BladeWear() {}

    /**
     * Finds the load that is left.
     *
     * @param load before N0, above 0
     * @param rate of each spring k, above 0
     * @param wear of the tip w, or the height of the cup c; not negative
     * @return N, above 0
     * @throws Refused NO_CONTACT when nothing is left, OUT_OF_RANGE
     */
    public static Solution<Force> loadAfter(Force load, SpringRate rate, Length wear) {
        checked(load, rate);
        Limits.notNegative("wear", wear);
        Force left = BladeLoad.pressing(load.minus(rate.force(wear).times(2)));
        return Solution.of(
                left,
                Step.of("load-after-wear", "load", load)
                        .with("rate", rate)
                        .with("wear", wear)
                        .with("left", left));
    }

    /**
     * Finds the wear after which the springs have to be tensioned again, w = (1 - keep) N0/(2 k).
     *
     * @param load as set N0, above 0
     * @param rate of each spring k, above 0
     * @param keep the share of the load to keep, 0..1; 0.8 is usual
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Length> toRetension(Force load, SpringRate rate, double keep) {
        checked(load, rate);
        Ratio kept = Limits.within("keep", new Ratio(keep), 0, 1);
        Length wear = rate.change(load.times((1 - keep) / 2));
        return Solution.of(
                wear,
                Step.of("wear-to-retension", "load", load)
                        .with("keep", kept)
                        .with("rate", rate)
                        .with("wear", wear));
    }

    /**
     * Finds how long an amount of wear takes.
     *
     * @param wear not negative
     * @param wearPerThousandHours how fast the tip wears, above 0
     */
    public static Solution<Time> hoursTo(Length wear, Length wearPerThousandHours) {
        Limits.notNegative("wear", wear);
        Limits.positive("wearPer1000Hours", wearPerThousandHours);
        Time time = Time.ofHours(wear.millimetres() / wearPerThousandHours.millimetres() * HOURS);
        return Solution.of(
                time,
                Step.of("hours-to-wear", "wear", wear)
                        .with("wearPer1000Hours", wearPerThousandHours)
                        .with("time", time));
    }

    private static void checked(Force load, SpringRate rate) {
        Limits.positive("load", load);
        Limits.positive("rate", rate);
    }
}
