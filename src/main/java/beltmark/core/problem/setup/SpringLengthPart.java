package beltmark.core.problem.setup;

import beltmark.core.problem.Carry;
import beltmark.core.problem.Exhibit;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.setup.Situation;
import beltmark.core.setup.SpringLengthSlips;
import beltmark.core.setup.SpringSetting;
import beltmark.core.units.Quantity;
import java.util.List;

/** Looking up the spring length for the blade and the tip. */
final class SpringLengthPart {

    private SpringLengthPart() {}

    static Part of(Situation situation, SituationRanges ranges) {
        SpringSetting setting = situation.springSetting();
        LengthBlank blank = new LengthBlank(
                "both",
                setting.springLength(),
                ranges.reading(),
                ranges.springAnswers(),
                SpringLengthSlips.of(situation.card(), setting),
                Carry.none());
        return new Part(
                SetupPart.SPRING_LENGTH.id(), List.of(), List.of(chart(situation)), List.of(blank), setting.steps());
    }

    /** The chart of the tip on the blade; the chart of the other tip stands on the card's page. */
    private static Exhibit chart(Situation situation) {
        return new Exhibit(
                "spring-chart",
                List.of("chart-blade", "chart-spring-length"),
                situation.card().tip(situation.tip()).chart().stream()
                        .map(row -> List.<Quantity>of(row.blade(), row.springLength()))
                        .toList());
    }
}
