package beltmark.practice;

import beltmark.core.grading.Leaving;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Working.PartWorking;
import beltmark.core.problem.Given;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.setup.SetupPart;
import beltmark.core.setup.TipCard;
import beltmark.drawing.Drawing;
import beltmark.texts.Words;
import beltmark.web.OperationId;
import beltmark.web.Told;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes the page of an attempt; nothing that would give an answer away is put on it before its time. */
final class ProblemPages {

    private final View view;
    private final Words words;
    private final Attempt attempt;
    private final Problem problem;

    ProblemPages(View view, Attempt attempt) {
        this.view = view;
        this.words = view.words();
        this.attempt = attempt;
        this.problem = attempt.working().problem();
    }

    /** {@return the page of the attempt as it is stored} */
    ProblemPage page(@Nullable String notice) {
        return page(new PartGrade(Map.of()), Map.of(), notice);
    }

    /**
     * Makes the page again after something could not be read.
     *
     * @param grade how the sent answer was judged
     * @param typed what was sent, by blank
     * @param notice the key of something to be told on top, or null
     * @return the page with everything typed still on it
     */
    ProblemPage page(PartGrade grade, Map<String, String> typed, @Nullable String notice) {
        return new ProblemPage(
                view,
                problem.family(),
                problem.code().text(),
                told(problem.givens()),
                chart(),
                parts(grade, typed),
                OperationId.fresh(),
                state(),
                notice);
    }

    private String state() {
        if (!attempt.working().isFinished()) {
            return "working";
        }
        return attempt.working().isClean() ? "clean" : "finished";
    }

    private List<PartView> parts(PartGrade grade, Map<String, String> typed) {
        List<PartView> parts = new ArrayList<>();
        PartWorking open = attempt.working().open().orElse(null);
        for (PartWorking part : attempt.working().parts()) {
            String state = part.isClosed() ? "done" : part.equals(open) ? "open" : "ahead";
            parts.add(part(part, parts.size() + 1, state, grade, typed));
        }
        return parts;
    }

    private PartView part(PartWorking working, int number, String state, PartGrade grade, Map<String, String> typed) {
        Part part = working.part();
        boolean open = state.equals("open");
        Leaving leaving = working.leaving();
        BlankViews blanks = new BlankViews(view, attempt, working, maySolve(working));
        return new PartView(
                part.id(),
                number,
                state,
                told(part.givens()),
                drawings(working, state),
                part.blanks().stream()
                        .map(blank -> open ? blanks.open(blank, grade, typed) : blanks.closed(blank))
                        .toList(),
                open && working.last() != null,
                leaving == null ? null : leaving.id(),
                maySolve(working) ? steps(part) : List.of());
    }

    private List<Drawing> drawings(PartWorking working, String state) {
        Set<SetupPart> solved = attempt.working().parts().stream()
                .filter(this::maySolve)
                .flatMap(part -> SetupPart.find(part.part().id()).stream())
                .collect(Collectors.toSet());
        return state.equals("ahead")
                ? List.of()
                : SetupPart.find(working.part().id())
                        .map(new PartDrawings(attempt.working(), solved, words)::of)
                        .orElse(List.of());
    }

    /** The steps of a part left with an own figure wait until the end, since later parts build on that figure. */
    private boolean maySolve(PartWorking part) {
        return part.isClosed()
                && (part.leaving() != Leaving.OWN_FIGURE || attempt.working().isFinished());
    }

    private List<String> steps(Part part) {
        return part.steps().stream()
                .map(step -> words.say("setup.step." + step.id(), step.values()))
                .toList();
    }

    private List<Told> told(List<Given> givens) {
        return givens.stream()
                .map(given -> new Told(words.say("problem.given." + given.id()), words.quantity(given.value())))
                .toList();
    }

    /** The chart of the tip on the blade; the chart of the other tip stands on the card's page. */
    private List<Told> chart() {
        boolean needed = problem.parts().stream().anyMatch(part -> part.id().equals(SetupPart.SPRING_LENGTH.id()));
        TipCard tip = problem.situation().card().tip(problem.situation().tip());
        return !needed
                ? List.of()
                : tip.chart().stream()
                        .map(row -> new Told(words.length(row.blade()), words.length(row.springLength())))
                        .toList();
    }
}
