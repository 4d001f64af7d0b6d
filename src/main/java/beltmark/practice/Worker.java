package beltmark.practice;

import beltmark.core.units.Graduation;
import beltmark.web.Visitor;
import org.jspecify.annotations.Nullable;

/**
 * Whose answer it is, and who sends it.
 *
 * @param person the number of the person who worked it
 * @param actor the number of the person who sends it: the same, or the trainer who types in a sheet of paper
 * @param graduation how the person reads lengths
 * @param pack the number of the paper pack it was worked on; null on screen
 */
public record Worker(
        long person,
        long actor,
        Graduation graduation,
        @Nullable Long pack) {

    /** {@return somebody at the screen} */
    public static Worker of(Visitor visitor) {
        return new Worker(visitor.personId(), visitor.personId(), visitor.graduation(), null);
    }
}
