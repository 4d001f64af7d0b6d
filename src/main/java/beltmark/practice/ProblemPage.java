package beltmark.practice;

import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.Told;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A problem being worked: what is told, the drawings, each part in the state it is in.
 *
 * @param view what all pages share
 * @param family the family's id
 * @param code the problem's code
 * @param told what is told for the whole problem
 * @param parts the parts, in order
 * @param operation names the next sending
 * @param state {@code working}, {@code finished} or {@code clean}
 * @param notice the key of something to be told on top, or null
 */
public record ProblemPage(
        View view,
        String family,
        String code,
        List<Told> told,
        List<PartView> parts,
        OperationId operation,
        String state,
        @Nullable String notice)
        implements Page {

    /** Shown as an example of how a length is typed; no answer of any problem on purpose. */
    private static final Length EXAMPLE = Length.ofSixteenths(9 * 16 + 3);

    /** {@return the heading} */
    public String title() {
        return view.text("problem.family." + family + ".title");
    }

    /** {@return what the family is about} */
    public String story() {
        return view.text("problem.family." + family + ".story");
    }

    /** {@return what the page says of the problem, in which words of the trade are looked for} */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>(List.of(story()));
        told.forEach(line -> sentences.add(line.label()));
        for (PartView part : parts) {
            if (part.isOpen() || part.isDone()) {
                sentences.add(part.ask());
                part.told().forEach(line -> sentences.add(line.label()));
                part.blanks().forEach(blank -> sentences.add(blank.sentence()));
                sentences.addAll(part.steps());
            }
        }
        return sentences;
    }

    /** {@return the address of the problem} */
    public String path() {
        return "/practice/" + family + "/" + code;
    }

    /** {@return whether all parts are done} */
    public boolean finished() {
        return !state.equals("working");
    }

    /** {@return what a length typed without a unit means} */
    public String unitHint() {
        Graduation graduation = view.words().graduation();
        String example = LengthPrinter.print(EXAMPLE, graduation);
        return view.text("practice.unit-hint." + graduation.unit().symbol(), "example", example);
    }
}
