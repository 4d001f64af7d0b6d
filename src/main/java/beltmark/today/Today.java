package beltmark.today;

import beltmark.content.Content;
import beltmark.core.mastery.NextDrill;
import beltmark.core.mastery.NextDrill.Pick;
import beltmark.core.problem.ProblemFamily;
import beltmark.db.Database;
import beltmark.mastery.Habit;
import beltmark.mastery.HabitWords;
import beltmark.mastery.Skills;
import beltmark.texts.Words;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a person finds on the start page. */
public final class Today {

    /** Begun last: it puts together what the drills teach. */
    private static final String WHOLE_SET_UP = "bench";

    private final Database database;
    private final List<String> families;
    private final Clock clock;
    private final Skills skills = new Skills();

    public Today(Database database, Content content, Clock clock) {
        this.database = database;
        this.families = content.families().stream()
                .map(ProblemFamily::id)
                .sorted(Comparator.comparing(WHOLE_SET_UP::equals))
                .toList();
        this.clock = clock;
    }

    /** {@return the ten minutes of practice for today, each with the reason why it was picked} */
    List<DrillLine> drill(Visitor person, Words words) {
        LocalDate day = LocalDate.now(clock);
        List<Pick> picks = database.read(handle -> skills.drill(handle, person.personId(), families, day));
        return picks.stream().map(pick -> line(pick, words)).toList();
    }

    private static DrillLine line(Pick pick, Words words) {
        Map<String, Object> values = new HashMap<>();
        values.put("right", pick.of().state().inARow());
        values.put("share", (int) Math.round(100 * pick.of().state().known()));
        LocalDate due = pick.of().state().dueOn();
        if (due != null) {
            values.put("due", due);
        }
        String slip = pick.of()
                .habit()
                .map(habit -> words.say("problem.slip." + habit))
                .orElse("");
        values.put("slip", slip);
        String why = pick.why() == NextDrill.Why.KEEP_UP && due == null
                ? "keep-up-new"
                : pick.why().id();
        return new DrillLine(
                pick.family(),
                words.say("problem.family." + pick.family() + ".title"),
                words.say("today.why." + why, values));
    }

    /** {@return the person's habits, as the sentences of the slips} */
    List<String> habits(Visitor person, Words words) {
        LocalDate day = LocalDate.now(clock);
        List<Habit> habits = database.read(handle -> skills.habits(handle, person.personId(), day));
        return HabitWords.tell(habits, words);
    }
}
