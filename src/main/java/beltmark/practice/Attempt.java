package beltmark.practice;

import beltmark.core.grading.Grade;
import beltmark.core.grading.Leaving;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Working;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.practice.AttemptStore.Event;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One person's going at one problem, as far as it has come.
 *
 * @param working the state of every part
 * @param typed the last recorded text of each blank, by its path
 */
record Attempt(Working working, Map<String, String> typed) {

    /** {@return the attempt that these events make} */
    static Attempt of(Problem problem, List<Event> events) {
        Attempt attempt = new Attempt(Working.of(problem), Map.of());
        for (Event event : events) {
            attempt = attempt.after(event);
        }
        return attempt;
    }

    Attempt after(Event event) {
        if (event.figures().isEmpty()) {
            return new Attempt(working.left(leaving(event.verdict())), typed);
        }
        Map<String, Grade> grades = new HashMap<>();
        Map<String, String> more = new HashMap<>(typed);
        event.figures().forEach(figure -> {
            asked(event.part(), figure.blank()).ifPresent(blank -> grades.put(figure.blank(), figure.toGrade(blank)));
            more.put(Part.path(event.part(), figure.blank()), figure.typed());
        });
        return new Attempt(working.answered(new PartGrade(grades)), more);
    }

    private Optional<Blank> asked(String part, String blank) {
        return working.problem().parts().stream()
                .filter(known -> known.id().equals(part))
                .flatMap(known -> known.blanks().stream())
                .filter(known -> known.id().equals(blank))
                .findFirst();
    }

    private static Leaving leaving(String id) {
        return Stream.of(Leaving.values())
                .filter(how -> how.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a part cannot be left by " + id));
    }
}
