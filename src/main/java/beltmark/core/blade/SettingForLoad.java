package beltmark.core.blade;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Force;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Word;

/**
 * The spring length that gives a wanted line load, the same on both sides, brackets square to the belt: F = (q b + m g
 * cos(theta))/2, L = L0 - F/k, and measured over the washer L + t_w. Own derivation.
 *
 * @param each the force of each spring F
 * @param coil the length of each coil alone L
 * @param measured from the top of the washer to the top of the base
 */
public record SettingForLoad(Force each, Length coil, Length measured) {

    /**
     * Finds the setting.
     *
     * @param wanted the line load q, above 0
     * @param spring the spring on each side
     * @param washer its thickness t_w, not negative
     * @param assembly what the springs carry
     * @return the setting; with THIN_OVERRUN when the springs have less than 15 % of force left
     * @throws Refused COIL_BIND when the springs are too weak for it, OUT_OF_RANGE
     */
    public static Solution<SettingForLoad> of(LineLoad wanted, WorkingSpring spring, Length washer, Assembly assembly) {
        Limits.positive("lineLoad", wanted);
        Limits.notNegative("washer", washer);
        Force load = wanted.over(assembly.blade());
        Force across = assembly.weightAcross();
        Force each = load.plus(across).times(0.5);
        Length coil = spring.lengthAt(each);
        SettingForLoad setting = new SettingForLoad(each, coil, coil.plus(washer));
        return Solution.of(
                        setting,
                        Step.of("force-each", "lineLoad", wanted)
                                .with("blade", assembly.blade())
                                .with("weightAcross", across)
                                .with("each", each),
                        Step.of("coil-at-force", "free", spring.free())
                                .with("each", each)
                                .with("rate", spring.rate())
                                .with("coil", coil),
                        Step.of("over-washer", "coil", coil)
                                .with("washer", washer)
                                .with("measured", setting.measured))
                .warnIf(spring.isThinAt(coil), Warning.THIN_OVERRUN);
    }

    /**
     * A setting that can be read off a tape, and the load it really gives.
     *
     * @param measured the nearest graduation, exactly midway the even one
     * @param load what the blade presses with then
     */
    public record Rounded(Length measured, BladeLoad load) {}

    /**
     * Rounds the setting to a tape and finds the load again.
     *
     * @param graduation of the tape; 1/16 in is usual
     * @return the rounded setting and its load
     * @throws Refused SPRING_LOOSE, COIL_BIND, NO_CONTACT when rounding leads there
     */
    public static Solution<Rounded> rounded(
            LineLoad wanted, WorkingSpring spring, Length washer, Assembly assembly, Graduation graduation) {
        Solution<SettingForLoad> exact = of(wanted, spring, washer, assembly);
        Length set = exact.result().measured.roundedTo(graduation);
        Solution<BladeLoad> load = BladeLoad.square(spring, new SpringLengths(set, set, washer), assembly);
        return Solution.of(
                        new Rounded(set, load.result()),
                        Step.of("rounded-setting", "measured", exact.result().measured)
                                .with("set", set))
                .after(exact.withoutWarnings())
                .followedBy(load);
    }

    /**
     * Which setting to use.
     *
     * @param measured from the top of the washer to the top of the base
     * @param basis {@code setting-from.chart} or {@code setting-from.load}
     */
    public record Chosen(Length measured, Word basis) {

        /** {@return what the chart says} */
        public static Chosen ofChart(Length chart) {
            return new Chosen(chart, new Word("setting-from.chart"));
        }

        /** {@return what was found for the wanted load} */
        public static Chosen ofLoad(Length measured) {
            return new Chosen(measured, new Word("setting-from.load"));
        }
    }

    /** {@return the computed setting, where there is no chart} */
    public static Solution<Chosen> asComputed(Solution<SettingForLoad> computed) {
        return new Solution<>(Chosen.ofLoad(computed.result().measured), computed.steps(), computed.warnings());
    }

    /**
     * Lets the hardware card's chart win over the computed setting.
     *
     * @param chart what the chart says, above 0
     * @param computed the setting for the wanted line load
     * @return the chart's; with CHART_DIFFERS when they are more than 1/16 in apart
     */
    public static Solution<Chosen> chartWins(Length chart, Solution<SettingForLoad> computed) {
        Limits.positive("chart", chart);
        Length measured = computed.result().measured;
        boolean differs = !chart.isWithin(Graduation.SIXTEENTH_INCH.step(), measured);
        return Solution.of(
                        Chosen.ofChart(chart),
                        Step.of("chart-wins", "measured", measured).with("chart", chart))
                .warnIf(differs, Warning.CHART_DIFFERS)
                .after(computed);
    }
}
