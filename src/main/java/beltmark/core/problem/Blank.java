package beltmark.core.problem;

/** One thing to fill in. */
public sealed interface Blank permits LengthBlank, ChoiceBlank {

    /** {@return the name within its part, lower case} */
    String id();

    /** {@return the right answer} */
    Answer right();

    /** {@return whether nothing but the right answer can be taken for it, nor one slip for another} */
    boolean isFair();
}
