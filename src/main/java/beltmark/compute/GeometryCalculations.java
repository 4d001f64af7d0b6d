package beltmark.compute;

import static beltmark.compute.CommonFields.BLADE;
import static beltmark.compute.CommonFields.SLOPE;
import static beltmark.compute.CommonFields.SPAN;

import beltmark.core.geometry.ArmAngle;
import beltmark.core.geometry.BoltClearance;
import beltmark.core.geometry.Centring;
import beltmark.core.geometry.Diagonals;
import beltmark.core.geometry.Exposure;
import beltmark.core.geometry.PoleLength;
import beltmark.core.geometry.Skew;
import beltmark.core.geometry.SlopingBelt;
import beltmark.core.units.Angle;
import java.util.List;

/** What can be computed of where things are about the belt line. */
final class GeometryCalculations {

    private GeometryCalculations() {}

    static List<Calculation<?>> all() {
        return List.of(
                alongNormal(),
                Calculation.of(
                        "level-versus-belt",
                        "mm",
                        g -> SlopingBelt.levelAgainstTilt(g.length("blade"), g.get("tilt", Angle.class)),
                        BLADE,
                        Field.of("tilt", Kind.ANGLE).also("beltTilt")),
                Calculation.of(
                        "exposure-after",
                        "mm",
                        g -> Exposure.after(
                                g.length("exposure"),
                                g.lengthOrZero("bracketHigh"),
                                g.lengthOrZero("wear"),
                                g.lengthOrZero("drop")),
                        Field.of("exposure", Kind.LENGTH).also("asSet", "startExposure"),
                        Field.of("bracketHigh", Kind.LENGTH).also("mountedHigh").optional(),
                        Field.of("wear", Kind.LENGTH).optional(),
                        Field.of("drop", Kind.LENGTH).also("splice").optional()),
                Calculation.of(
                        "bolt-clearance",
                        "mm",
                        g -> BoltClearance.of(
                                g.length("along"),
                                g.length("above"),
                                new BoltClearance.Plate(g.length("plateWidth"), g.length("plateHeight")),
                                g.length("headRadius")),
                        Field.of("along", Kind.LENGTH).also("dx"),
                        Field.of("above", Kind.LENGTH).also("dz"),
                        Field.of("plateWidth", Kind.LENGTH).also("width"),
                        Field.of("plateHeight", Kind.LENGTH).also("height"),
                        Field.of("headRadius", Kind.LENGTH).also("boltRadius", "radius")),
                centring(),
                Calculation.of(
                        "pole-length",
                        "mm",
                        g -> PoleLength.of(g.length("outside"), g.length("bracket"), g.length("overhang")),
                        Field.of("outside", Kind.LENGTH).also("outsideWidth"),
                        Field.of("bracket", Kind.LENGTH),
                        Field.of("overhang", Kind.LENGTH)),
                skew(),
                Calculation.several(
                                "out-of-square",
                                g -> Diagonals.of(
                                        g.length("firstDiagonal"), g.length("secondDiagonal"), g.length("along")),
                                Field.of("firstDiagonal", Kind.LENGTH).also("diagonal1", "d1"),
                                Field.of("secondDiagonal", Kind.LENGTH).also("diagonal2", "d2"),
                                Field.of("along", Kind.LENGTH).also("markedLength"))
                        .giving("outOfSquareMm", "mm", Diagonals::outOfSquare)
                        .giving("acrossMm", "mm", Diagonals::across),
                Calculation.of(
                        "arm-angle-error",
                        "°",
                        g -> ArmAngle.error(g.length("arm"), g.length("height"), g.length("heightOff")),
                        Field.of("arm", Kind.LENGTH).also("armLength"),
                        Field.of("height", Kind.LENGTH).also("z"),
                        Field.of("heightOff", Kind.LENGTH).also("heightError", "dz")));
    }

    private static Calculation<SlopingBelt> alongNormal() {
        return Calculation.several(
                        "along-normal",
                        g -> SlopingBelt.of(g.length("square"), g.get("slope", Angle.class)),
                        Field.of("square", Kind.LENGTH).also("distance", "offset"),
                        SLOPE)
                .giving("plumbMm", "mm", SlopingBelt::plumbReading)
                .giving("shiftMm", "mm", SlopingBelt::shiftAlong)
                .giving("gotIfPlumbMm", "mm", SlopingBelt::gotIfPlumb);
    }

    private static Calculation<Centring> centring() {
        return Calculation.several(
                        "centring",
                        g -> Centring.of(
                                new Centring.Widths(g.length("inside"), g.length("belt"), g.length("blade")),
                                g.lengthOrZero("beltOffset"),
                                g.lengthOrZero("bladeOffset"),
                                g.lengthOrZero("mistracking")),
                        Field.of("inside", Kind.LENGTH).also("insideWidth"),
                        Field.of("belt", Kind.LENGTH).also("beltWidth"),
                        BLADE,
                        Field.of("beltOffset", Kind.LENGTH).optional(),
                        Field.of("bladeOffset", Kind.LENGTH).optional(),
                        Field.of("mistracking", Kind.LENGTH).also("mistrack").optional())
                .giving("leftWallMm", "mm", Centring::leftWall)
                .giving("rightWallMm", "mm", Centring::rightWall)
                .giving("edgeMarginMm", "mm", Centring::edgeMargin);
    }

    private static Calculation<Skew> skew() {
        return Calculation.several(
                        "skew",
                        g -> Skew.of(g.length("outOfLine"), g.length("span"), g.length("blade")),
                        Field.of("outOfLine", Kind.LENGTH).also("dx"),
                        SPAN,
                        BLADE)
                .giving("leadMm", "mm", Skew::lead)
                .giving("angleDeg", "°", Skew::angle)
                .giving("widthLostMm", "mm", Skew::widthLost);
    }
}
