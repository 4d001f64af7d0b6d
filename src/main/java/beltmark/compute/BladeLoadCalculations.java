package beltmark.compute;

import static beltmark.compute.CommonFields.BLADE;
import static beltmark.compute.CommonFields.BOTH;
import static beltmark.compute.CommonFields.FREE;
import static beltmark.compute.CommonFields.FRICTION;
import static beltmark.compute.CommonFields.LEFT;
import static beltmark.compute.CommonFields.LINE_LOAD;
import static beltmark.compute.CommonFields.LOAD;
import static beltmark.compute.CommonFields.MASS;
import static beltmark.compute.CommonFields.RATE;
import static beltmark.compute.CommonFields.RIGHT;
import static beltmark.compute.CommonFields.SLOPE;
import static beltmark.compute.CommonFields.SOLID;
import static beltmark.compute.CommonFields.SPAN;
import static beltmark.compute.CommonFields.WASHER;
import static beltmark.compute.CommonFields.assembly;
import static beltmark.compute.CommonFields.lengths;
import static beltmark.compute.CommonFields.spring;

import beltmark.core.blade.BladeLoad;
import beltmark.core.blade.BladeLoad.ReturnRun;
import beltmark.core.blade.EdgeLoads;
import beltmark.core.blade.EvenSprings;
import beltmark.core.blade.LoadError;
import beltmark.core.blade.SettingForLoad;
import beltmark.core.blade.SettingForLoad.Chosen;
import beltmark.core.solution.Solution;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What can be computed of the load of a blade from its springs, and of its springs for a load. */
final class BladeLoadCalculations {

    private static final List<Field> SET_UP =
            List.of(RATE, FREE, SOLID.optional(), LEFT, RIGHT, BOTH, WASHER.optional(), MASS, SLOPE.optional(), BLADE);
    private static final List<Field> WANTED =
            List.of(LINE_LOAD, RATE, FREE, SOLID.optional(), WASHER.optional(), MASS, SLOPE.optional(), BLADE);
    private static final String UP_SLOPE = "up-slope";
    private static final Field RUN = Field.choice("returnRuns", List.of("down-slope", UP_SLOPE));
    private static final Field OFF_CENTRE =
            Field.of("bladeOffCentre", Kind.LENGTH).also("offCentre").optional();
    private static final Field WEIGHT_OFF_CENTRE =
            Field.of("weightOffCentre", Kind.LENGTH).optional();
    private static final Field WEIGHT = Field.of("weight", Kind.FORCE).also("weightAcross");

    private BladeLoadCalculations() {}

    static List<Calculation<?>> all() {
        return List.of(
                loads("blade-load", BladeLoadCalculations::square, SET_UP),
                loads("blade-load-plumb", BladeLoadCalculations::plumb, plus(SET_UP, FRICTION, RUN)),
                setting(),
                rounded(),
                edges("edge-line-loads", BladeLoadCalculations::edgeLoads, edgeFields()),
                edges(
                        "uneven-sides",
                        BladeLoadCalculations::unevenSides,
                        plus(SET_UP, SPAN, OFF_CENTRE, WEIGHT_OFF_CENTRE)),
                Calculation.several(
                                "even-springs",
                                BladeLoadCalculations::evenSprings,
                                LOAD,
                                WEIGHT,
                                SPAN,
                                BLADE,
                                OFF_CENTRE)
                        .giving("leftForceN", "N", EvenSprings::left)
                        .giving("rightForceN", "N", EvenSprings::right),
                Calculation.several("load-error", BladeLoadCalculations::loadError, RATE, LEFT, RIGHT, TOLERANCE)
                        .giving("worstN", "N", LoadError::worst)
                        .giving("likelyN", "N", LoadError::likely));
    }

    private static final Field TOLERANCE =
            Field.of("tolerance", Kind.LENGTH).also("length").optional();

    private static List<Field> plus(List<Field> fields, Field... more) {
        List<Field> all = new ArrayList<>(fields);
        all.addAll(List.of(more));
        return all;
    }

    private static Calculation<BladeLoad> loads(
            String name, Function<Given, Solution<BladeLoad>> function, List<Field> fields) {
        return Calculation.several(name, function, fields.toArray(Field[]::new))
                .giving("loadN", "N", BladeLoad::load)
                .giving("lineLoadNPerMm", "N/mm", BladeLoad::lineLoad)
                .giving("leftForceN", "N", BladeLoad::left)
                .giving("rightForceN", "N", BladeLoad::right);
    }

    private static Solution<BladeLoad> square(Given given) {
        return BladeLoad.square(spring(given), lengths(given), assembly(given));
    }

    private static Solution<BladeLoad> plumb(Given given) {
        ReturnRun run = given.text("returnRuns").equals(UP_SLOPE) ? ReturnRun.UP_SLOPE : ReturnRun.DOWN_SLOPE;
        return BladeLoad.plumb(spring(given), lengths(given), assembly(given), given.ratio("friction"), run);
    }

    /** A setting, and where it is from. */
    private record Setting(Length measured, Word basis, SettingForLoad computed) {}

    private static Calculation<Setting> setting() {
        return Calculation.several(
                        "spring-setting",
                        BladeLoadCalculations::set,
                        plus(WANTED, Field.of("chart", Kind.LENGTH).optional()).toArray(Field[]::new))
                .giving("measuredMm", "mm", Setting::measured)
                .giving("coilMm", "mm", setting -> setting.computed.coil())
                .giving("eachForceN", "N", setting -> setting.computed.each())
                .giving("computedMm", "mm", setting -> setting.computed.measured())
                .giving("basis", "", Setting::basis)
                .also("length-for-line-load");
    }

    private static Solution<Setting> set(Given given) {
        Solution<SettingForLoad> computed = SettingForLoad.of(
                given.lineLoad("lineLoad"), spring(given), given.lengthOrZero("washer"), assembly(given));
        Solution<Chosen> chosen = given.has("chart")
                ? SettingForLoad.chartWins(given.length("chart"), computed)
                : SettingForLoad.asComputed(computed);
        return new Solution<>(
                new Setting(chosen.result().measured(), chosen.result().basis(), computed.result()),
                chosen.steps(),
                chosen.warnings());
    }

    private static Calculation<SettingForLoad.Rounded> rounded() {
        return Calculation.several(
                        "rounded-setting",
                        given -> SettingForLoad.rounded(
                                given.lineLoad("lineLoad"),
                                spring(given),
                                given.lengthOrZero("washer"),
                                assembly(given),
                                Graduations.of(given)),
                        plus(WANTED, Graduations.FIELD).toArray(Field[]::new))
                .giving("setMm", "mm", SettingForLoad.Rounded::measured)
                .giving("loadN", "N", rounded -> rounded.load().load())
                .giving("lineLoadNPerMm", "N/mm", rounded -> rounded.load().lineLoad());
    }

    private static Calculation<EdgeLoads> edges(
            String name, Function<Given, Solution<EdgeLoads>> function, List<Field> fields) {
        return Calculation.several(name, function, fields.toArray(Field[]::new))
                .giving("leftNPerMm", "N/mm", EdgeLoads::left)
                .giving("rightNPerMm", "N/mm", EdgeLoads::right)
                .giving("eccentricityMm", "mm", EdgeLoads::eccentricity)
                .giving("contactMm", "mm", EdgeLoads::contact);
    }

    private static List<Field> edgeFields() {
        return List.of(
                LOAD.optional(),
                Field.of("eccentricity", Kind.LENGTH).optional(),
                BLADE,
                Field.of("leftForce", Kind.FORCE).also("left").optional(),
                Field.of("rightForce", Kind.FORCE).also("right").optional(),
                WEIGHT.optional(),
                SPAN.optional(),
                OFF_CENTRE,
                WEIGHT_OFF_CENTRE);
    }

    /** Load and eccentricity as given, or from the forces of the springs. */
    private static Solution<EdgeLoads> edgeLoads(Given given) {
        if (given.has("eccentricity") || !given.has("leftForce")) {
            PreciseLength off = new PreciseLength(given.length("eccentricity").millimetres());
            return EdgeLoads.of(given.force("load"), off, given.length("blade"));
        }
        Force weight = given.get("weight", Force.ZERO);
        return EdgeLoads.fromSprings(given.force("leftForce"), given.force("rightForce"), weight, layout(given));
    }

    private static Solution<EdgeLoads> unevenSides(Given given) {
        EdgeLoads.Layout layout = layout(given);
        Solution<BladeLoad> load = square(given);
        return EdgeLoads.fromSprings(
                        load.result().left(),
                        load.result().right(),
                        assembly(given).weightAcross(),
                        layout)
                .after(load);
    }

    private static EdgeLoads.Layout layout(Given given) {
        return new EdgeLoads.Layout(
                given.length("span"),
                given.length("blade"),
                given.lengthOrZero("bladeOffCentre"),
                given.lengthOrZero("weightOffCentre"));
    }

    private static Solution<EvenSprings> evenSprings(Given given) {
        return EvenSprings.of(
                given.force("load"),
                given.force("weight"),
                given.length("span"),
                given.length("blade"),
                given.lengthOrZero("bladeOffCentre"));
    }

    private static Solution<LoadError> loadError(Given given) {
        @Nullable Length both = given.has("tolerance") ? given.length("tolerance") : null;
        return LoadError.of(
                given.rate(), both == null ? given.length("left") : both, both == null ? given.length("right") : both);
    }
}
