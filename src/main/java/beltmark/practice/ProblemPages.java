package beltmark.practice;

import beltmark.core.grading.Leaving;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Working.PartWorking;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.drawing.Drawing;
import beltmark.drawing.problem.ProblemDrawings;
import beltmark.drawing.problem.Telling;
import beltmark.problem.ProblemWords;
import beltmark.web.OperationId;
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
    private final ProblemWords words;
    private final Attempt attempt;
    private final Problem problem;

    ProblemPages(View view, Attempt attempt) {
        this.view = view;
        this.words = new ProblemWords(view.words());
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
                words.told(problem.givens()),
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

    private String title(Part part, int number) {
        int count = problem.parts().size();
        String title = words.title(part);
        return count == 1 ? title : view.text("practice.part-of", "number", number, "count", count, "title", title);
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
                title(part, number),
                words.ask(part),
                words.told(part.givens()),
                state.equals("ahead") ? List.of() : words.exhibits(part),
                drawings(working, state),
                part.blanks().stream()
                        .map(blank -> open ? blanks.open(blank, grade, typed) : blanks.closed(blank))
                        .toList(),
                open && working.last() != null,
                leaving == null ? null : leaving.id(),
                maySolve(working) ? words.steps(part) : List.of());
    }

    private List<Drawing> drawings(PartWorking working, String state) {
        Set<String> solved = attempt.working().parts().stream()
                .filter(this::maySolve)
                .map(part -> part.part().id())
                .collect(Collectors.toSet());
        Telling telling = new Telling(problem, solved, attempt.working().own(), view.words());
        return state.equals("ahead") ? List.of() : ProblemDrawings.of(working.part(), telling);
    }

    /** The steps of a part left with an own figure wait until the end, since later parts build on that figure. */
    private boolean maySolve(PartWorking part) {
        return part.isClosed()
                && (part.leaving() != Leaving.OWN_FIGURE || attempt.working().isFinished());
    }
}
