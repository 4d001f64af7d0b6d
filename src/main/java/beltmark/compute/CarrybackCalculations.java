package beltmark.compute;

import static beltmark.compute.CommonFields.BELT_SPEED;

import beltmark.core.carryback.Carryback;
import beltmark.core.carryback.CleaningEfficiency;
import beltmark.core.measure.Unit;
import beltmark.core.units.Coverage;
import beltmark.core.units.Time;
import java.util.List;

/** What can be computed of carryback. */
final class CarrybackCalculations {

    private static final double KILOGRAMS_PER_TONNE = 1000;

    private CarrybackCalculations() {}

    static List<Calculation<?>> all() {
        return List.of(
                Calculation.several(
                                "carryback",
                                g -> Carryback.of(
                                        g.quantity("carryback", Coverage.class),
                                        g.length("width"),
                                        g.speed("beltSpeed"),
                                        g.get("running", Time.ofHours(1))),
                                Field.of("carryback", Kind.COVERAGE).also("coverage", "residue"),
                                Field.of("width", Kind.LENGTH).also("dirtyWidth"),
                                BELT_SPEED,
                                Field.of("running", Kind.TIME).also("", "time").optional())
                        .giving("hourlyKgPerH", "kg/h", Carryback::hourly)
                        .giving("totalKg", "kg", Carryback::total)
                        .giving(
                                "totalT",
                                "t",
                                c -> new Unit.Measured(c.total().kilograms() / KILOGRAMS_PER_TONNE, Unit.TONNE)),
                Calculation.of(
                        "cleaning-efficiency",
                        "",
                        g -> CleaningEfficiency.of(
                                g.quantity("before", Coverage.class), g.quantity("after", Coverage.class)),
                        Field.of("before", Kind.COVERAGE),
                        Field.of("after", Kind.COVERAGE)),
                Calculation.of(
                        "in-series",
                        "",
                        g -> CleaningEfficiency.inSeries(g.numbers("efficiencies")),
                        Field.of("efficiencies", Kind.NUMBERS)));
    }
}
