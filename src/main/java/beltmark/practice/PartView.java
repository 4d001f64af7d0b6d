package beltmark.practice;

import beltmark.core.problem.setup.SetupPart;
import beltmark.drawing.Drawing;
import beltmark.web.Option;
import beltmark.web.Told;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One part as its page shows it.
 *
 * @param id the part's id
 * @param number from 1
 * @param state {@code done}, {@code open} or {@code ahead}
 * @param told what is told for this part only
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
        List<Told> told,
        List<Drawing> drawings,
        List<BlankView> blanks,
        boolean canLeave,
        @Nullable String leaving,
        List<String> steps) {

    /**
     * One blank.
     *
     * @param name the field's name
     * @param label what is asked
     * @param options the options of a choice; none for a length
     * @param value as typed or picked; empty before
     * @param answer the value as the person reads it, once recorded; empty before
     * @param reading how a length was read, or empty
     * @param error why it could not be read, or null
     * @param verdict the verdict's id, or null before the first
     * @param sentence what is said of it; empty before
     * @param right the right answer, once it may be told; empty before
     */
    public record BlankView(
            String name,
            String label,
            List<Option> options,
            String value,
            String answer,
            String reading,
            @Nullable String error,
            @Nullable String verdict,
            String sentence,
            String right) {}

    /** {@return whether it is being answered} */
    public boolean isOpen() {
        return state.equals("open");
    }

    /** {@return whether it is done} */
    public boolean isDone() {
        return state.equals("done");
    }

    /** {@return whether the card's chart is looked up in this part} */
    public boolean needsChart() {
        return id.equals(SetupPart.SPRING_LENGTH.id());
    }
}
