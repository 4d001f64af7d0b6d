package beltmark.core.problem;

import beltmark.core.setup.HardwareCard;

/** A generator of problems with one story and one kind of drawing. */
public interface ProblemFamily {

    /** {@return the hyphenated name} */
    String id();

    /** {@return the version; counts up whenever a code would mean another problem} */
    int version();

    /** {@return this family on one hardware card only; the family itself where no card plays a part} */
    ProblemFamily on(HardwareCard card);

    /**
     * Draws until a problem is fair.
     *
     * @param code the name of the problem
     * @param draw where its numbers come from
     * @return the problem and how many draws it took
     * @throws IllegalStateException when the ranges and cards give no fair problem; content is checked for it at start
     */
    Trial trial(ProblemCode code, Draw draw);

    /** {@return the problem of a code, always the same one} */
    default Problem problem(ProblemCode code) {
        return trial(code, Draw.of(id(), code)).problem();
    }

    /**
     * A problem and how it came about.
     *
     * @param problem the first fair one
     * @param draws how many draws it took, the fair one too
     */
    record Trial(Problem problem, int draws) {}
}
