package beltmark.compute;

import beltmark.core.blade.Assembly;
import beltmark.core.blade.SpringLengths;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Ratio;

/** Fields that several quantities share, and the types of the core that are put together from them. */
final class CommonFields {

    static final Field WIRE = Field.of("wire", Kind.LENGTH).also("wireDiameter");
    static final Field MEAN_COIL = Field.of("meanCoil", Kind.LENGTH).also("coil", "meanDiameter", "coilDiameter");
    static final Field ACTIVE_COILS = Field.of("activeCoils", Kind.NUMBER);
    static final Field SHEAR_MODULUS = Field.of("shearModulus", Kind.STRESS);
    static final Field RATE = Field.of("rate", Kind.RATE).also("springRate");
    static final Field FREE = Field.of("free", Kind.LENGTH).also("freeLength");
    static final Field SOLID = Field.of("solid", Kind.LENGTH).also("solidLength");
    static final Field MASS = Field.of("mass", Kind.MASS).also("movingMass");
    static final Field SLOPE = Field.of("slope", Kind.ANGLE).also("beltSlope");
    static final Field BLADE = Field.of("blade", Kind.LENGTH).also("bladeLength", "bladeWidth");
    static final Field WASHER = Field.of("washer", Kind.LENGTH).also("washerThickness");
    static final Field LOAD = Field.of("load", Kind.FORCE).also("bladeLoad");
    static final Field LINE_LOAD = Field.of("lineLoad", Kind.LINE_LOAD);
    static final Field FRICTION = Field.of("friction", Kind.NUMBER).also("mu", "frictionCoefficient");
    static final Field BELT_SPEED = Field.of("beltSpeed", Kind.SPEED).also("speed");
    static final Field THICKNESS = Field.of("thickness", Kind.LENGTH).also("contact", "tipThickness");
    static final Field SPAN = Field.of("span", Kind.LENGTH).also("springSpan");
    static final Field SPLICE = Field.of("splice", Kind.LENGTH).also("spliceHeight");

    /** Each spring from the top of the washer to the top of the base, or both by the one field {@code length}. */
    static final Field LEFT = Field.of("left", Kind.LENGTH).also("leftLength").optional();

    static final Field RIGHT =
            Field.of("right", Kind.LENGTH).also("rightLength").optional();
    static final Field BOTH =
            Field.of("length", Kind.LENGTH).also("measured", "setting").optional();

    private CommonFields() {}

    static WorkingSpring spring(Given given) {
        return new WorkingSpring(given.rate(), given.length("free"), given.lengthOrZero("solid"));
    }

    static Assembly assembly(Given given) {
        return new Assembly(given.mass("mass"), given.angleOrZero("slope"), given.length("blade"));
    }

    static SpringLengths lengths(Given given) {
        return new SpringLengths(side(given, "left"), side(given, "right"), given.lengthOrZero("washer"));
    }

    /** A side's own length, or the one that is given for both. */
    private static Length side(Given given, String side) {
        return given.has(side) || !given.has("length")
                ? given.length(side)
                : Limits.positive("length", given.length("length"));
    }

    static LineLoad lineLoad(Given given) {
        return given.lineLoad("lineLoad");
    }

    static Ratio friction(Given given) {
        return given.ratio("friction");
    }
}
