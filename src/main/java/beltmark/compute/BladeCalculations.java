package beltmark.compute;

import static beltmark.compute.CommonFields.BELT_SPEED;
import static beltmark.compute.CommonFields.FREE;
import static beltmark.compute.CommonFields.FRICTION;
import static beltmark.compute.CommonFields.LINE_LOAD;
import static beltmark.compute.CommonFields.LOAD;
import static beltmark.compute.CommonFields.MASS;
import static beltmark.compute.CommonFields.RATE;
import static beltmark.compute.CommonFields.SLOPE;
import static beltmark.compute.CommonFields.SOLID;
import static beltmark.compute.CommonFields.SPLICE;
import static beltmark.compute.CommonFields.THICKNESS;
import static beltmark.compute.CommonFields.WASHER;
import static beltmark.compute.CommonFields.spring;

import beltmark.core.blade.Assembly;
import beltmark.core.blade.BladeLoad;
import beltmark.core.blade.BladeWear;
import beltmark.core.blade.Bounce;
import beltmark.core.blade.BushingBand;
import beltmark.core.blade.Drag;
import beltmark.core.blade.NutTurns;
import beltmark.core.blade.SpliceCheck;
import beltmark.core.blade.SpringLengths;
import beltmark.core.measure.Unit;
import beltmark.core.solution.Solution;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Mass;
import beltmark.core.units.Speed;
import java.util.List;

/** What can be computed of a blade at work: wear, splices, bounce, drag, guides and adjusting. */
final class BladeCalculations {

    private static final double USUAL_KEEP = 0.8;
    /** Stands in where only the forces of the springs matter and not the length of the blade. */
    private static final Length ANY_BLADE = Length.ofMillimetres(1000);

    private static final Field WEAR = Field.of("wear", Kind.LENGTH);

    private BladeCalculations() {}

    static List<Calculation<?>> all() {
        return List.of(
                Calculation.of("after-wear", "N", g -> lessLoad(g, "wear"), LOAD, RATE, WEAR),
                Calculation.of("after-cup", "N", g -> lessLoad(g, "cup"), LOAD, RATE, Field.of("cup", Kind.LENGTH)),
                Calculation.of(
                        "wear-to-retension",
                        "mm",
                        g -> BladeWear.toRetension(g.force("load"), g.rate(), g.number("keep", USUAL_KEEP)),
                        LOAD,
                        RATE,
                        Field.of("keep", Kind.NUMBER).optional()),
                Calculation.several(
                                "hours-to-wear",
                                g -> BladeWear.hoursTo(g.length("wear"), g.length("wearPer1000Hours")),
                                WEAR,
                                Field.of("wearPer1000Hours", Kind.LENGTH))
                        .giving("hours", "h", time -> new Unit.Measured(time.hours(), Unit.HOUR)),
                splice(),
                Calculation.of(
                        "bounce-frequency",
                        "Hz",
                        g -> Bounce.frequency(g.rate(), g.mass("mass"), g.get("springMass", new Mass(0))),
                        RATE,
                        MASS,
                        Field.of("springMass", Kind.MASS).optional()),
                bounceReturn(),
                Calculation.of(
                        "jump-speed",
                        "m/s",
                        g -> Bounce.jumpSpeed(swing(g), g.length("height"), g.length("length")),
                        LOAD,
                        RATE,
                        MASS,
                        Field.of("height", Kind.LENGTH).also("bumpHeight"),
                        Field.of("length", Kind.LENGTH).also("bumpLength")),
                drag(),
                dragStandard(),
                Calculation.several(
                                "contact-pressure",
                                g -> Drag.contactPressure(g.lineLoad("lineLoad"), g.length("thickness")),
                                LINE_LOAD,
                                THICKNESS)
                        .giving("pressureKpa", "kPa", p -> new Unit.Measured(p.kilopascals(), Unit.KILOPASCAL)),
                bushingBand(),
                Calculation.several(
                                "nut-turns",
                                g -> NutTurns.of(g.length("change"), g.length("pitch")),
                                Field.of("change", Kind.LENGTH),
                                Field.of("pitch", Kind.LENGTH).also("threadPitch"))
                        .giving("turns", "", NutTurns::turns)
                        .giving("flats", "", NutTurns::flats));
    }

    private static Solution<Force> lessLoad(Given given, String by) {
        return BladeWear.loadAfter(given.force("load"), given.rate(), given.length(by));
    }

    private static Calculation<SpliceCheck> splice() {
        return Calculation.several(
                        "splice-check",
                        BladeCalculations::spliceCheck,
                        RATE,
                        FREE,
                        SOLID.optional(),
                        Field.of("length", Kind.LENGTH).also("coil", "measured", "setting"),
                        WASHER.optional(),
                        LOAD.optional(),
                        MASS.optional(),
                        SLOPE.optional(),
                        Field.of("exposure", Kind.LENGTH),
                        Field.of("gaps", Kind.LENGTH)
                                .also("coilGaps", "coilGapSum")
                                .optional(),
                        SPLICE)
                .giving("marginMm", "mm", SpliceCheck::margin)
                .giving("travelMm", "mm", SpliceCheck::travel)
                .giving("coilMm", "mm", SpliceCheck::coil)
                .giving("eachForceN", "N", SpliceCheck::each)
                .giving("loadN", "N", SpliceCheck::load)
                .giving("limit", "", SpliceCheck::limit);
    }

    private static Solution<SpliceCheck> spliceCheck(Given given) {
        WorkingSpring spring = spring(given);
        Length coil = given.length("length").minus(given.lengthOrZero("washer"));
        SpliceCheck.Room room = new SpliceCheck.Room(given.length("exposure"), given.lengthOrZero("gaps"));
        return SpliceCheck.of(spring, coil, loadAsSet(given, spring), room, given.length("splice"));
    }

    /** The load as given, or from the moving mass. */
    private static Force loadAsSet(Given given, WorkingSpring spring) {
        if (given.has("load") || !given.has("mass")) {
            return given.force("load");
        }
        Length length = given.length("length");
        Assembly assembly = new Assembly(given.mass("mass"), given.angleOrZero("slope"), ANY_BLADE);
        SpringLengths lengths = new SpringLengths(length, length, given.lengthOrZero("washer"));
        return BladeLoad.square(spring, lengths, assembly).result().load();
    }

    private static Calculation<Bounce> bounceReturn() {
        return Calculation.several(
                        "bounce-return",
                        g -> Bounce.back(
                                swing(g),
                                g.length("drop"),
                                g.get("downwardSpeed", new Speed(0)),
                                g.get("beltSpeed", new Speed(0))),
                        LOAD,
                        RATE,
                        MASS,
                        Field.of("drop", Kind.LENGTH).also("height", "splice"),
                        Field.of("downwardSpeed", Kind.SPEED).also("downward").optional(),
                        BELT_SPEED.optional())
                .giving("timeS", "s", Bounce::time)
                .giving("farthestMm", "mm", Bounce::farthest)
                .giving("beltPassedMm", "mm", Bounce::beltPassed);
    }

    private static Bounce.Swing swing(Given given) {
        return new Bounce.Swing(given.force("load"), given.rate(), given.mass("mass"));
    }

    private static Calculation<Drag> drag() {
        return Calculation.several(
                        "drag",
                        g -> Drag.of(g.force("load"), g.ratio("friction"), g.get("beltSpeed", new Speed(0))),
                        LOAD,
                        FRICTION,
                        BELT_SPEED.optional())
                .giving("forceN", "N", Drag::force)
                .giving("powerW", "W", Drag::power);
    }

    private static Calculation<Force> dragStandard() {
        return Calculation.of(
                "drag-standard",
                "N",
                g -> Drag.standard(
                        g.pressure("pressure"),
                        g.length("width"),
                        g.length("thickness"),
                        g.ratio("friction"),
                        g.number("cleaners", 1)),
                Field.of("pressure", Kind.PRESSURE).also("contactPressure"),
                Field.of("width", Kind.LENGTH).also("blade", "bladeWidth"),
                THICKNESS,
                FRICTION,
                Field.of("cleaners", Kind.NUMBER).also("count").optional());
    }

    private static Calculation<BushingBand> bushingBand() {
        return Calculation.several(
                        "bushing-band",
                        g -> BushingBand.of(
                                g.force("net"),
                                new BushingBand.Guide(
                                        g.ratio("friction"),
                                        g.ratio("bushingFriction"),
                                        g.length("overhang"),
                                        g.length("bushing"))),
                        Field.of("net", Kind.FORCE).also("load", "netLoad"),
                        FRICTION,
                        Field.of("bushingFriction", Kind.NUMBER).also("muBushing", "bushingMu"),
                        Field.of("overhang", Kind.LENGTH),
                        Field.of("bushing", Kind.LENGTH).also("bushingLength"))
                .giving("lowN", "N", BushingBand::low)
                .giving("highN", "N", BushingBand::high)
                .giving("rubbing", "", BushingBand::friction);
    }
}
