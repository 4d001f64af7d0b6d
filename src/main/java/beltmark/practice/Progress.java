package beltmark.practice;

import beltmark.core.grading.Verdict;
import beltmark.core.grading.Working;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Problem;
import beltmark.mastery.FirstAnswer;
import beltmark.mastery.Skills;
import beltmark.practice.AttemptStore.Event;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.jdbi.v3.core.Handle;

/** Tells mastery what an answer shows: each problem counts once, and only first answers count. */
final class Progress {

    private final Skills skills = new Skills();

    void count(Handle handle, long person, Attempt before, Attempt after, Event event, LocalDate day) {
        Problem problem = after.working().problem();
        boolean first = before.working().open(event.part()).stream().anyMatch(part -> part.last() == null);
        if (first && !event.figures().isEmpty()) {
            skills.answered(handle, firstAnswer(person, problem.family(), event), day);
        }
        boolean lost = !isSpoiled(before.working()) && isSpoiled(after.working());
        if (lost || after.working().isClean()) {
            skills.observe(handle, person, problem.family(), guess(problem), !lost, day);
        }
    }

    private static FirstAnswer firstAnswer(long person, String family, Event event) {
        List<String> slips = event.figures().stream()
                .map(Figure::slip)
                .filter(Objects::nonNull)
                .toList();
        boolean right = event.figures().stream().allMatch(figure -> Verdict.of(figure.verdict()) == Verdict.RIGHT);
        return new FirstAnswer(person, family, event.part(), right, slips);
    }

    /** {@return whether a part was not right at the first answer, so that the problem cannot become clean any more} */
    private static boolean isSpoiled(Working working) {
        return working.parts().stream()
                .anyMatch(part -> part.leaving() != null || (part.last() != null && !part.rightFirst()));
    }

    /** {@return how likely the hardest blank is right by guessing; that of all together would be too small to matter} */
    private static double guess(Problem problem) {
        return problem.parts().stream()
                .flatMap(part -> part.blanks().stream())
                .mapToDouble(Blank::guess)
                .min()
                .orElse(1);
    }
}
