package beltmark.core.problem.bank.kit;

import beltmark.core.units.Word;

/**
 * One line of the kit list.
 *
 * @param option the part, by its option id
 * @param asked how many, on each side or for the whole cleaner, at least 1
 * @param eachSide whether that many are needed on each side
 */
record KitLine(String option, int asked, boolean eachSide) {

    private static final int SIDES = 2;

    /** {@return how many the whole cleaner needs} */
    int needed() {
        return eachSide ? SIDES * asked : asked;
    }

    static Word word(String option) {
        return new Word("problem.option." + option);
    }
}
