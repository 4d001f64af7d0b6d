package beltmark.core.problem;

import beltmark.core.units.Length;

/** What a person answered to one blank, once it could be read. */
public sealed interface Answer {

    /**
     * A length.
     *
     * @param length as read, exact
     */
    record OfLength(Length length) implements Answer {}

    /**
     * One of the options.
     *
     * @param option the option's id
     */
    record OfChoice(String option) implements Answer {}
}
