package beltmark.core.sheet;

import beltmark.core.blade.BladeLoad;
import beltmark.core.blade.EdgeLoads;
import beltmark.core.blade.LoadError;
import beltmark.core.blade.NutTurns;
import beltmark.core.blade.SettingForLoad;
import beltmark.core.blade.SettingForLoad.Chosen;
import beltmark.core.blade.SpringLengths;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.SpringSetting;
import beltmark.core.setup.Tip;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Warning;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import java.util.List;
import java.util.Optional;

/**
 * How the springs are set and what the blade presses with then. The card's chart wins; where it has no row for the blade,
 * the setting is computed from the wanted line load and rounded to a graduation.
 *
 * @param computed the setting for the wanted line load, whatever the chart says
 * @param setting the setting to use, with where it comes from
 * @param load of the blade on the belt at that setting
 * @param perGraduation how far the load is off when both springs are set 1/16 in wrong
 * @param uneven the line loads at the ends when the left spring is set 1/16 in long and the right one 1/16 in short
 * @param nut how far the nut turns for 1/16 in
 */
public record Springs(
        Found<SettingForLoad> computed,
        Found<Chosen> setting,
        Found<BladeLoad> load,
        Found<LoadError> perGraduation,
        Found<EdgeLoads> uneven,
        Found<NutTurns> nut) {

    private static final Length STEP = Graduation.SIXTEENTH_INCH.step();

    /** {@return the springs of an installation} */
    static Springs of(Installation installation) {
        HardwareCard card = installation.card();
        Found<WorkingSpring> spring = Found.of(() -> Solution.of(card.spring().working()));
        Found<SettingForLoad> computed = spring.then(
                known -> SettingForLoad.of(wanted(installation), known, card.washer(), installation.assembly())
                        .withoutWarnings());
        Found<Chosen> setting = setting(installation, spring, computed);
        Found<BladeLoad> load = setting.then(
                set -> BladeLoad.square(card.spring().working(), lengths(set, card), installation.assembly()));
        return new Springs(
                computed,
                setting,
                load,
                load.then(found -> LoadError.of(card.spring().rate(), STEP, STEP)),
                load.and(setting, (found, set) -> uneven(installation, set)),
                Found.of(() -> NutTurns.of(STEP, card.pole().nutPitch())));
    }

    private static LineLoad wanted(Installation installation) {
        return installation.card().blade().wanted(installation.situation().tip());
    }

    private static Found<Chosen> setting(
            Installation installation, Found<WorkingSpring> spring, Found<SettingForLoad> computed) {
        Tip tip = installation.situation().tip();
        Optional<SpringSetting> chart = SpringSetting.fromChart(installation.card(), tip, installation.blade());
        return chart.map(row -> Found.of(() -> fromChart(row, computed)))
                .orElseGet(() -> spring.then(known -> rounded(installation, known)));
    }

    private static Solution<Chosen> fromChart(SpringSetting row, Found<SettingForLoad> computed) {
        Solution<SettingForLoad> beside = computed.solution();
        Solution<Chosen> chosen = beside == null
                ? Solution.of(Chosen.ofChart(row.springLength()))
                : SettingForLoad.chartWins(row.springLength(), beside);
        return chosen.after(new Solution<>(row, row.steps(), List.of()));
    }

    private static Solution<Chosen> rounded(Installation installation, WorkingSpring spring) {
        Solution<SettingForLoad.Rounded> rounded = SettingForLoad.rounded(
                wanted(installation),
                spring,
                installation.card().washer(),
                installation.assembly(),
                Graduation.SIXTEENTH_INCH);
        Chosen chosen = Chosen.ofLoad(rounded.result().measured());
        return new Solution<>(chosen, rounded.steps(), List.of()).warnIf(true, Warning.NOT_ON_CHART);
    }

    /** {@return both springs as set} */
    static SpringLengths lengths(Chosen set, HardwareCard card) {
        return lengths(set, Length.ZERO, card);
    }

    private static SpringLengths lengths(Chosen set, Length leftLonger, HardwareCard card) {
        return new SpringLengths(set.measured().plus(leftLonger), set.measured().minus(leftLonger), card.washer());
    }

    /** That one end lifts then is what the figure tells; it is no doubt about the setting itself. */
    private static Solution<EdgeLoads> uneven(Installation installation, Chosen set) {
        HardwareCard card = installation.card();
        SpringLengths lengths = lengths(set, STEP, card);
        WorkingSpring spring = card.spring().working();
        EdgeLoads.Layout layout = new EdgeLoads.Layout(
                card.blade().span(installation.blade()), installation.blade(), Length.ZERO, Length.ZERO);
        return EdgeLoads.fromSprings(
                        spring.forceAt(lengths.leftCoil()),
                        spring.forceAt(lengths.rightCoil()),
                        installation.assembly().weightAcross(),
                        layout)
                .withoutWarnings();
    }

    /** {@return every quantity, in the order of the job} */
    List<Found<?>> all() {
        return List.of(computed, setting, load, perGraduation, uneven, nut);
    }
}
