package beltmark.mastery;

import beltmark.texts.Words;
import java.util.List;
import java.util.Map;

/** Tells habits to the person and to those who train them, in one sentence each. */
public final class HabitWords {

    private HabitWords() {}

    /** {@return the habits: where, how often, and what is said of the slip} */
    public static List<String> tell(List<Habit> habits, Words words) {
        return habits.stream()
                .map(habit -> words.say(
                        "today.habit",
                        Map.of(
                                "family", words.say("problem.family." + habit.family() + ".title"),
                                "matches", habit.state().matches(),
                                "chances", habit.state().chances(),
                                "slip", words.say("problem.slip." + habit.part() + "." + habit.slip()))))
                .toList();
    }
}
