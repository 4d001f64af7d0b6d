package beltmark.core.problem.setup;

import beltmark.core.problem.Carry;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.setup.Situation;
import beltmark.core.setup.SpringLengthSlips;
import beltmark.core.setup.SpringSetting;
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
                Carry.NONE);
        return new Part(SetupPart.SPRING_LENGTH.id(), List.of(), List.of(blank), setting.steps());
    }
}
