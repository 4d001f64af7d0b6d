package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.core.setup.AsLeft;
import beltmark.core.setup.AsLeftCheck;
import beltmark.core.setup.SpringSetting;
import java.time.LocalDate;
import java.util.Map;

/**
 * A demonstration as it was read from the form, every field readable and every observation ticked.
 *
 * @param rig the hardware
 * @param setting the spring setting for the blade, from the card's chart
 * @param asLeft what was measured
 * @param conveyor where
 * @param on the day at the site
 * @param typed the measures as typed, by measure and side
 * @param checklist what was watched
 */
public record Demonstration(
        Rig rig,
        SpringSetting setting,
        AsLeft asLeft,
        String conveyor,
        LocalDate on,
        Map<String, String> typed,
        Checklist checklist) {

    public Demonstration {
        typed = Map.copyOf(typed);
    }

    AsLeftCheck check() {
        return AsLeftCheck.of(rig.card(), setting, asLeft);
    }
}
