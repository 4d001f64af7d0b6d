package beltmark.practice.pack;

import beltmark.drawing.Drawing;
import beltmark.problem.BlankField;
import beltmark.problem.ExhibitView;
import beltmark.texts.Words;
import beltmark.web.Told;
import java.util.List;

/**
 * One sheet as it is printed, in the language and the unit of its person.
 *
 * @param words the person's words
 * @param person whose it is
 * @param problems what is on it
 */
public record SheetView(Words words, Receiver person, List<ProblemView> problems) {

    /**
     * A problem.
     *
     * @param number from 1
     * @param code its code
     * @param title the family's name
     * @param story what it is about
     * @param told what is told for the whole problem
     * @param parts what is asked
     */
    public record ProblemView(
            int number, String code, String title, String story, List<Told> told, List<PartView> parts) {}

    /**
     * A part.
     *
     * @param title its heading
     * @param ask what it asks
     * @param told what is told for it
     * @param exhibits its tables
     * @param drawings its drawings, without answers
     * @param fields its blanks
     * @param key the right answer and the slips of each blank
     */
    public record PartView(
            String title,
            String ask,
            List<Told> told,
            List<ExhibitView> exhibits,
            List<Drawing> drawings,
            List<BlankField> fields,
            List<KeyLine> key) {}

    /**
     * What the key says of a blank.
     *
     * @param label what is asked
     * @param right the right answer
     * @param slips what each slip leads to, and what is said of it
     */
    public record KeyLine(String label, String right, List<Told> slips) {}
}
