package beltmark.practice;

import beltmark.drawing.Drawing;
import beltmark.problem.BlankField;
import beltmark.problem.ExhibitView;
import beltmark.web.Told;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One part as its page shows it.
 *
 * @param id the part's id
 * @param number from 1
 * @param state {@code done}, {@code open} or {@code ahead}
 * @param title the heading: which of how many, and what it is
 * @param ask what it asks
 * @param told what is told for this part only
 * @param exhibits its tables
 * @param drawings its drawings; dimensioned once it is done
 * @param blanks what is to be filled in, or was
 * @param canLeave whether it was answered and may now be left
 * @param leaving the id of how it was left, or null
 * @param steps the worked steps; none while they would give the answer away
 */
public record PartView(
        String id,
        int number,
        String state,
        String title,
        String ask,
        List<Told> told,
        List<ExhibitView> exhibits,
        List<Drawing> drawings,
        List<BlankView> blanks,
        boolean canLeave,
        @Nullable String leaving,
        List<String> steps) {

    /**
     * One blank.
     *
     * @param field how it is asked, with what was typed
     * @param answer the value as the person reads it, once recorded; empty before
     * @param verdict the verdict's id, or null before the first
     * @param sentence what is said of it; empty before
     * @param right the right answer, once it may be told; empty before
     */
    public record BlankView(
            BlankField field, String answer, @Nullable String verdict, String sentence, String right) {}

    /** {@return whether it is being answered} */
    public boolean isOpen() {
        return state.equals("open");
    }

    /** {@return whether it is done} */
    public boolean isDone() {
        return state.equals("done");
    }
}
