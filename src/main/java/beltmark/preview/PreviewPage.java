package beltmark.preview;

import beltmark.core.problem.Blank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.drawing.Drawing;
import beltmark.drawing.problem.ProblemDrawings;
import beltmark.drawing.problem.Telling;
import beltmark.problem.ExhibitView;
import beltmark.problem.ProblemWords;
import beltmark.texts.Words;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.Told;
import beltmark.web.View;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One problem with its answers, slips and steps.
 *
 * @param view what all pages share
 * @param words the words of the chosen language and unit
 * @param choices what can be chosen
 * @param problem the problem
 * @param card the chosen card's id, or empty
 */
public record PreviewPage(View view, Words words, Choices choices, Problem problem, String card) implements Page {

    /**
     * A blank with its right answer and slips.
     *
     * @param label what is asked
     * @param right the right answer
     * @param slips what each slip leads to, and what is said of it
     */
    public record BlankLine(String label, String right, List<Told> slips) {}

    private ProblemWords told() {
        return new ProblemWords(words);
    }

    /** {@return the name of the family in the chosen language} */
    public String title() {
        return told().title(problem.family());
    }

    /** {@return what the family is about} */
    public String story() {
        return told().story(problem.family());
    }

    /** {@return what is told for the whole problem} */
    public List<Told> givens() {
        return told().told(problem.givens());
    }

    /** {@return the heading of a part} */
    public String title(Part part) {
        return told().title(part);
    }

    /** {@return what a part asks} */
    public String ask(Part part) {
        return told().ask(part);
    }

    /** {@return what is told for a part} */
    public List<Told> givens(Part part) {
        return told().told(part.givens());
    }

    /** {@return the tables of a part} */
    public List<ExhibitView> exhibits(Part part) {
        return told().exhibits(part);
    }

    /** {@return the worked steps of a part} */
    public List<String> steps(Part part) {
        return told().steps(part);
    }

    /** {@return the drawings of a part as they are when it is solved} */
    public List<Drawing> drawings(Part part) {
        Set<String> solved = problem.parts().stream().map(Part::id).collect(Collectors.toSet());
        return ProblemDrawings.of(part, new Telling(problem, solved, OwnFigures.NONE, words));
    }

    /** {@return the blanks of a part} */
    public List<BlankLine> blanks(Part part) {
        return part.blanks().stream().map(blank -> line(part, blank)).toList();
    }

    private BlankLine line(Part part, Blank blank) {
        return new BlankLine(
                told().label(part, blank),
                told().told(blank, blank.right()),
                blank.wrongAnswers().stream()
                        .map(wrong ->
                                new Told(told().told(blank, wrong.answer()), told().slip(part.id(), wrong.slip())))
                        .toList());
    }

    /** {@return the families} */
    public List<Option> families() {
        return choices.families();
    }

    /** {@return the hardware cards} */
    public List<Option> cards() {
        return choices.cards();
    }

    /** {@return the languages} */
    public List<Option> languages() {
        return choices.languages();
    }

    /** {@return the tapes} */
    public List<Option> graduations() {
        return choices.graduations();
    }
}
