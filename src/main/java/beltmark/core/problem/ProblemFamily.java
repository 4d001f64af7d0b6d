package beltmark.core.problem;

/** A generator of problems with one story and one kind of drawing. */
public interface ProblemFamily {

    /** {@return the hyphenated name} */
    String id();

    /** {@return the version; counts up whenever a code would mean another problem} */
    int version();

    /** {@return the problem of a code, always the same one} */
    Problem problem(ProblemCode code);
}
