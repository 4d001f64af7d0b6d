package beltmark.compute;

import static beltmark.compute.CommonFields.ACTIVE_COILS;
import static beltmark.compute.CommonFields.FREE;
import static beltmark.compute.CommonFields.MEAN_COIL;
import static beltmark.compute.CommonFields.RATE;
import static beltmark.compute.CommonFields.SHEAR_MODULUS;
import static beltmark.compute.CommonFields.SOLID;
import static beltmark.compute.CommonFields.WIRE;

import beltmark.core.solution.Solution;
import beltmark.core.spring.Buckling;
import beltmark.core.spring.CoilCounts;
import beltmark.core.spring.CoilGaps;
import beltmark.core.spring.CoilRate;
import beltmark.core.spring.IndexForStrength;
import beltmark.core.spring.Overrun;
import beltmark.core.spring.ShearStress;
import beltmark.core.spring.SolidLength;
import beltmark.core.spring.SpringEnds;
import beltmark.core.spring.SpringIndex;
import beltmark.core.spring.SpringWire;
import beltmark.core.spring.StressFactor;
import beltmark.core.spring.Surge;
import beltmark.core.units.Force;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.Mass;
import beltmark.core.units.Pressure;
import beltmark.core.units.Ratio;
import beltmark.core.units.SpringRate;
import java.util.List;

/** What can be computed of a spring by itself. */
final class SpringCalculations {

    private static final double USUAL_DENSITY = 7850;
    private static final double USUAL_OVERRUN = 0.15;
    private static final double USUAL_SAFETY = 1.2;

    private static final Field ENDS = Field.choice("ends", Choices.ids(SpringEnds.values(), SpringEnds::id));
    private static final Field FACTOR = Field.choice("factor", Choices.ids(StressFactor.values(), StressFactor::id))
            .optional();
    private static final Field MATERIAL = Field.choice("material", Choices.ids(SpringWire.values(), SpringWire::id));
    private static final Field STRENGTH = Field.of("strength", Kind.STRESS).also("shearStrength");

    private SpringCalculations() {}

    static List<Calculation<?>> all() {
        return List.of(
                Calculation.of(
                        "spring-index",
                        "",
                        g -> SpringIndex.of(g.length("wire"), g.length("meanCoil")),
                        WIRE,
                        MEAN_COIL),
                Calculation.of(
                                "spring-rate",
                                "N/mm",
                                SpringCalculations::rate,
                                WIRE,
                                MEAN_COIL,
                                ACTIVE_COILS,
                                SHEAR_MODULUS)
                        .also("rate"),
                Calculation.of(
                                "spring-rate-long",
                                "N/mm",
                                g -> CoilRate.longForm(
                                        g.length("wire"),
                                        g.length("meanCoil"),
                                        g.number("activeCoils"),
                                        g.pressure("shearModulus")),
                                WIRE,
                                MEAN_COIL,
                                ACTIVE_COILS,
                                SHEAR_MODULUS)
                        .also("rate-long"),
                Calculation.of(
                        "stress-factor",
                        "",
                        g -> factor(g).solution(g.length("wire"), g.length("meanCoil")),
                        WIRE,
                        MEAN_COIL,
                        FACTOR),
                Calculation.of(
                        "shear-stress",
                        "MPa",
                        g -> ShearStress.of(g.force("force"), g.length("wire"), g.length("meanCoil"), factor(g)),
                        Field.of("force", Kind.FORCE).also("load"),
                        WIRE,
                        MEAN_COIL,
                        FACTOR),
                Calculation.of(
                        "safety-at-solid",
                        "",
                        g -> ShearStress.safetyAtSolid(g.pressure("strength"), g.pressure("stressAtSolid")),
                        STRENGTH,
                        Field.of("stressAtSolid", Kind.STRESS)),
                Calculation.of(
                        "tensile-strength", "MPa", g -> material(g).tensileStrength(g.length("wire")), MATERIAL, WIRE),
                Calculation.of("shear-modulus", "MPa", g -> material(g).shearModulus(g.length("wire")), MATERIAL, WIRE),
                Calculation.of(
                        "allowable-shear",
                        "MPa",
                        g -> material(g).allowableShear(g.length("wire"), g.flag("preset")),
                        MATERIAL,
                        WIRE,
                        Field.of("preset", Kind.FLAG).optional()),
                Calculation.several(
                                "coils",
                                SpringCalculations::coils,
                                ENDS,
                                WIRE,
                                ACTIVE_COILS.optional(),
                                Field.of("totalCoils", Kind.NUMBER).optional(),
                                FREE.optional(),
                                Field.of("pitch", Kind.LENGTH).optional())
                        .giving("totalCoils", "", CoilCounts::total)
                        .giving("activeCoils", "", CoilCounts::active)
                        .giving("pitchMm", "mm", CoilCounts::pitch)
                        .giving("freeMm", "mm", CoilCounts::free)
                        .giving("solidMm", "mm", CoilCounts::solid)
                        .also("coil-counts", "spring-coils"),
                Calculation.of(
                        "solid-length",
                        "mm",
                        g -> SolidLength.of(ends(g), g.length("wire"), active(g)),
                        ENDS,
                        WIRE,
                        ACTIVE_COILS.optional(),
                        Field.of("totalCoils", Kind.NUMBER).optional()),
                Calculation.of(
                        "solid-length-european",
                        "mm",
                        g -> SolidLength.byEuropeanRule(g.length("wire"), g.number("totalCoils"), g.flag("ground")),
                        WIRE.also("largestWire"),
                        Field.of("totalCoils", Kind.NUMBER),
                        Field.of("ground", Kind.FLAG)),
                Calculation.of(
                        "coil-gap-sum",
                        "mm",
                        g -> CoilGaps.sum(
                                g.length("wire"), g.length("meanCoil"), g.number("activeCoils"), g.flag("dynamic")),
                        WIRE,
                        MEAN_COIL,
                        ACTIVE_COILS,
                        Field.of("dynamic", Kind.FLAG).optional()),
                Calculation.of(
                        "shortest-length",
                        "mm",
                        g -> CoilGaps.shortestLength(g.length("solid"), g.length("gaps")),
                        SOLID,
                        Field.of("gaps", Kind.LENGTH).also("coilGaps")),
                Calculation.of(
                        "overrun",
                        "",
                        g -> Overrun.of(CommonFields.spring(g), g.force("mostForce")),
                        RATE,
                        FREE,
                        SOLID,
                        Field.of("mostForce", Kind.FORCE).also("force", "maxForce", "load")),
                Calculation.several(
                                "buckling",
                                SpringCalculations::buckling,
                                FREE,
                                MEAN_COIL,
                                Field.of("endConstant", Kind.NUMBER)
                                        .also("alpha")
                                        .optional(),
                                Field.of("youngModulus", Kind.STRESS).optional(),
                                SHEAR_MODULUS.optional())
                        .giving("criticalFreeMm", "mm", Buckling::criticalFree)
                        .giving("slenderness", "", Buckling::slenderness)
                        .giving("criticalDeflectionMm", "mm", Buckling::criticalDeflection),
                Calculation.of(
                        "active-mass",
                        "kg",
                        SpringCalculations::activeMass,
                        WIRE,
                        MEAN_COIL,
                        ACTIVE_COILS,
                        Field.of("density", Kind.DENSITY).optional()),
                Calculation.of(
                        "surge-frequency",
                        "Hz",
                        SpringCalculations::surge,
                        RATE.optional(),
                        MASS_OF_COILS,
                        WIRE.optional(),
                        MEAN_COIL.optional(),
                        ACTIVE_COILS.optional(),
                        SHEAR_MODULUS.optional(),
                        Field.of("density", Kind.DENSITY).optional(),
                        Field.of("freeEnd", Kind.FLAG).optional(),
                        Field.of("forcing", Kind.FREQUENCY).optional()),
                Calculation.of(
                        "index-for-strength",
                        "",
                        SpringCalculations::indexForStrength,
                        WIRE,
                        STRENGTH,
                        Field.of("force", Kind.FORCE).also("mostForce", "maxForce", "load"),
                        Field.of("overrun", Kind.NUMBER).also("xi").optional(),
                        Field.of("safety", Kind.NUMBER).also("safetyFactor").optional()));
    }

    private static final Field MASS_OF_COILS =
            Field.of("mass", Kind.MASS).also("activeMass", "springMass").optional();

    private static Solution<SpringRate> rate(Given given) {
        return CoilRate.of(
                given.length("wire"),
                given.length("meanCoil"),
                given.number("activeCoils"),
                given.pressure("shearModulus"));
    }

    private static StressFactor factor(Given given) {
        String id = given.text("factor", StressFactor.BERGSTRAESSER.id());
        return Choices.get(StressFactor.values(), StressFactor::id, id);
    }

    private static SpringWire material(Given given) {
        return Choices.get(SpringWire.values(), SpringWire::id, given.text("material"));
    }

    private static SpringEnds ends(Given given) {
        return Choices.get(SpringEnds.values(), SpringEnds::id, given.text("ends"));
    }

    private static double active(Given given) {
        return given.has("activeCoils") || !given.has("totalCoils")
                ? given.number("activeCoils")
                : given.number("totalCoils") - ends(given).inactiveCoils();
    }

    private static Solution<CoilCounts> coils(Given given) {
        SpringEnds ends = ends(given);
        Length wire = given.length("wire");
        return given.has("pitch") && !given.has("free")
                ? CoilCounts.fromPitch(ends, wire, active(given), given.length("pitch"))
                : CoilCounts.fromFree(ends, wire, active(given), given.length("free"));
    }

    private static Solution<Buckling> buckling(Given given) {
        Buckling.Moduli moduli = new Buckling.Moduli(
                given.get("youngModulus", Buckling.Moduli.STEEL.young()),
                given.get("shearModulus", Buckling.Moduli.STEEL.shear()));
        return Buckling.of(given.length("free"), given.length("meanCoil"), given.number("endConstant", 0.5), moduli);
    }

    private static Solution<Mass> activeMass(Given given) {
        return Surge.activeMass(
                given.length("wire"),
                given.length("meanCoil"),
                given.number("activeCoils"),
                given.number("density", USUAL_DENSITY));
    }

    /** Rate and mass are taken as given, or found from the dimensions. */
    private static Solution<Frequency> surge(Given given) {
        Solution<SpringRate> rate = given.has("rate") ? Solution.of(given.rate()) : rate(given);
        Solution<Mass> mass = given.has("mass") ? Solution.of(given.mass("mass")) : activeMass(given);
        Solution<Frequency> surge = Surge.frequency(rate.result(), mass.result(), given.flag("freeEnd"))
                .after(mass)
                .after(rate);
        return given.has("forcing") ? Surge.warned(surge, given.quantity("forcing", Frequency.class)) : surge;
    }

    private static Solution<Ratio> indexForStrength(Given given) {
        Force force = given.force("force");
        Pressure strength = given.pressure("strength");
        return IndexForStrength.of(
                given.length("wire"),
                strength,
                new IndexForStrength.Demand(
                        force, given.number("overrun", USUAL_OVERRUN), given.number("safety", USUAL_SAFETY)));
    }
}
