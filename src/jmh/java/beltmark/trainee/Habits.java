package beltmark.trainee;

import beltmark.core.grading.Grade;
import beltmark.core.grading.PartGrade;
import beltmark.core.mastery.HabitState;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Part;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The habits of one trainee so far, by part and slip. */
final class Habits {

    private final Map<String, HabitState> states = new HashMap<>();

    /** Counts the first answer to a part: one chance for each slip that any of its blanks knows. */
    void count(Part part, PartGrade grades, LocalDate day) {
        List<@Nullable String> named =
                grades.grades().values().stream().map(Grade::slip).toList();
        part.blanks().stream()
                .flatMap(blank -> blank.wrongAnswers().stream())
                .map(Blank.WrongAnswer::slip)
                .distinct()
                .forEach(slip -> states.compute(
                        part.id() + "." + slip,
                        (path, before) -> Optional.ofNullable(before)
                                .orElse(HabitState.NONE)
                                .after(named.contains(slip), grades.isRight(), day)));
    }

    List<String> confirmed(LocalDate day) {
        return states.entrySet().stream()
                .filter(state -> state.getValue().isConfirmed(day))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }
}
