package beltmark.practice;

import beltmark.core.mastery.SkillState;
import beltmark.texts.Words;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Says where a person stands with each family. */
final class SkillLines {

    private final Words words;

    SkillLines(Words words) {
        this.words = words;
    }

    List<SkillLine> of(List<String> families, Map<String, SkillState> states) {
        return families.stream()
                .map(family -> line(family, Optional.ofNullable(states.get(family))))
                .toList();
    }

    private SkillLine line(String family, Optional<SkillState> state) {
        return new SkillLine(
                family,
                words.say("problem.family." + family + ".title"),
                state.map(this::sentence).orElse(words.say("practice.skill-new")),
                state.map(SkillState::isMastered).orElse(false));
    }

    private String sentence(SkillState state) {
        LocalDate due = state.dueOn();
        Map<String, Object> values =
                Map.of("right", state.inARow(), "row", SkillState.ROW, "due", due == null ? LocalDate.EPOCH : due);
        return words.say(state.isMastered() ? "practice.skill-mastered" : "practice.skill-begun", values);
    }
}
