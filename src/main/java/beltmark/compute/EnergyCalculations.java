package beltmark.compute;

import static beltmark.compute.CommonFields.FREE;
import static beltmark.compute.CommonFields.RATE;

import beltmark.core.energy.BeltStrain;
import beltmark.core.energy.Capacitor;
import beltmark.core.energy.CompressedAir;
import beltmark.core.energy.Flywheel;
import beltmark.core.energy.Rollback;
import beltmark.core.energy.SpringEnergy;
import beltmark.core.energy.TakeUp;
import beltmark.core.solution.Solution;
import beltmark.core.units.Capacitance;
import beltmark.core.units.Energy;
import beltmark.core.units.Force;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.LineMass;
import beltmark.core.units.Resistance;
import beltmark.core.units.Time;
import beltmark.core.units.Voltage;
import beltmark.core.units.Volume;
import java.util.List;

/** What can be computed of the energy that is left when a conveyor is switched off. */
final class EnergyCalculations {

    private static final Field RESISTANCE = Field.of("resistance", Kind.RESISTANCE);
    private static final Field CAPACITANCE = Field.of("capacitance", Kind.CAPACITANCE);
    private static final Field FROM = Field.of("from", Kind.VOLTAGE).also("start", "startVoltage", "fromVoltage");
    private static final Field TO = Field.of("to", Kind.VOLTAGE).also("limit", "endVoltage", "toVoltage", "safe");
    private static final Field TIME = Field.of("time", Kind.TIME);
    private static final Field GAUGE = Field.of("gauge", Kind.PRESSURE).also("gaugePressure", "pressure");

    private EnergyCalculations() {}

    static List<Calculation<?>> all() {
        return List.of(
                takeUp(),
                Calculation.of(
                        "rollback",
                        "N",
                        g -> Rollback.of(
                                g.quantity("load", LineMass.class), g.length("lift"), g.get("friction", Force.ZERO)),
                        Field.of("load", Kind.LINE_MASS).also("material"),
                        Field.of("lift", Kind.LENGTH),
                        Field.of("friction", Kind.FORCE).optional()),
                beltStrain(),
                Calculation.of(
                        "spring-energy",
                        "J",
                        EnergyCalculations::springEnergy,
                        RATE,
                        Field.of("compression", Kind.LENGTH).also("deflection").optional(),
                        FREE.optional(),
                        Field.of("coil", Kind.LENGTH).also("length").optional(),
                        Field.of("springs", Kind.NUMBER).also("count").optional()),
                Calculation.of(
                                "air-energy",
                                "J",
                                g -> CompressedAir.receiver(
                                        g.pressure("gauge"),
                                        g.get("atmosphere", CompressedAir.ATMOSPHERE),
                                        g.quantity("volume", Volume.class)),
                                GAUGE,
                                Field.of("atmosphere", Kind.PRESSURE).optional(),
                                Field.of("volume", Kind.VOLUME))
                        .also("air-receiver", "gas-energy"),
                Calculation.of(
                        "cylinder-force",
                        "N",
                        g -> CompressedAir.cylinder(g.pressure("gauge"), g.length("bore"), g.lengthOrZero("rod")),
                        GAUGE,
                        Field.of("bore", Kind.LENGTH),
                        Field.of("rod", Kind.LENGTH).optional()),
                Calculation.of("capacitor-time", "s", EnergyCalculations::time, RESISTANCE, CAPACITANCE, FROM, TO),
                Calculation.of(
                        "capacitor-voltage",
                        "V",
                        g -> Capacitor.voltageAfter(resistance(g), capacitance(g), voltage(g, "from"), time(g, "time")),
                        RESISTANCE,
                        CAPACITANCE,
                        FROM,
                        TIME),
                Calculation.of(
                        "capacitor-energy",
                        "J",
                        g -> Capacitor.energy(capacitance(g), voltage(g, "voltage")),
                        CAPACITANCE,
                        Field.of("voltage", Kind.VOLTAGE).also("from", "start")),
                Calculation.of(
                        "bleed-resistor",
                        "Ω",
                        g -> Capacitor.bleedResistor(
                                capacitance(g), voltage(g, "from"), voltage(g, "to"), time(g, "time")),
                        CAPACITANCE,
                        FROM,
                        TO,
                        TIME),
                Calculation.of(
                                "flywheel-energy",
                                "J",
                                g -> Flywheel.energy(g.number("inertia"), g.quantity("rotation", Frequency.class)),
                                Field.of("inertia", Kind.INERTIA),
                                Field.of("rotation", Kind.FREQUENCY).also("speed", ""))
                        .also("flywheel", "rotor-energy"));
    }

    private static Calculation<TakeUp> takeUp() {
        return Calculation.several(
                        "take-up",
                        g -> TakeUp.of(g.mass("mass"), g.length("height")),
                        Field.of("mass", Kind.MASS),
                        Field.of("height", Kind.LENGTH).also("drop", "fall"))
                .giving("energyJ", "J", TakeUp::energy)
                .giving("strandTensionN", "N", TakeUp::strandTension)
                .also("take-up-energy");
    }

    private static Calculation<BeltStrain> beltStrain() {
        return Calculation.several(
                        "belt-strain-energy",
                        g -> BeltStrain.of(
                                new BeltStrain.Belt(
                                        g.length("length"), g.quantity("modulus", LineLoad.class), g.length("width")),
                                g.force("firstTension"),
                                g.has("secondTension") ? g.force("secondTension") : g.force("firstTension")),
                        Field.of("length", Kind.LENGTH),
                        Field.of("modulus", Kind.LINE_LOAD).also("beltModulus"),
                        Field.of("width", Kind.LENGTH).also("beltWidth"),
                        Field.of("firstTension", Kind.FORCE).also("tension", "tension1", "t1"),
                        Field.of("secondTension", Kind.FORCE)
                                .also("tension2", "t2")
                                .optional())
                .giving("energyJ", "J", BeltStrain::energy)
                .giving("stretchMm", "mm", BeltStrain::stretch)
                .also("belt-strain");
    }

    /** From the compression, or from free and present length. */
    private static Solution<Energy> springEnergy(Given given) {
        Length compression = given.has("compression") || !given.has("free")
                ? given.length("compression")
                : given.length("free").minus(given.length("coil"));
        return SpringEnergy.of(given.rate(), compression, given.number("springs", 1));
    }

    private static Solution<Time> time(Given given) {
        return Capacitor.time(resistance(given), capacitance(given), voltage(given, "from"), voltage(given, "to"));
    }

    private static Resistance resistance(Given given) {
        return given.quantity("resistance", Resistance.class);
    }

    private static Capacitance capacitance(Given given) {
        return given.quantity("capacitance", Capacitance.class);
    }

    private static Voltage voltage(Given given, String name) {
        return given.quantity(name, Voltage.class);
    }

    private static Time time(Given given, String name) {
        return given.quantity(name, Time.class);
    }
}
