package beltmark.core.problem.setup;

import beltmark.core.problem.Carry;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.setup.Situation;
import beltmark.core.setup.SleeveExposure;
import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import java.util.List;
import java.util.Optional;

/** Working out the sleeve left exposed for splice relief, with the tensioner fixed a little off its mark. */
final class SleevePart {

    private static final String AT_REST = "at-rest";

    private SleevePart() {}

    static Part of(Situation situation, SituationRanges ranges) {
        SleeveExposure sleeve = situation.sleeve();
        return new Part(
                SetupPart.SLEEVE.id(),
                givens(sleeve),
                List.of(atRest(sleeve, ranges), overSplice(sleeve, ranges)),
                sleeve.steps());
    }

    private static List<Given> givens(SleeveExposure sleeve) {
        return List.of(
                new Given("sleeve-as-set", sleeve.asSet()),
                new Given(
                        sleeve.mountedHigh().isNegative() ? "mounted-low" : "mounted-high",
                        sleeve.mountedHigh().abs()),
                new Given("splice", sleeve.splice()));
    }

    private static LengthBlank atRest(SleeveExposure sleeve, SituationRanges ranges) {
        List<Slip> slips = List.of(
                new Slip("wrong-way", sleeve.asSet().plus(sleeve.mountedHigh())),
                new Slip("mounting-left-out", sleeve.asSet()));
        return new LengthBlank(AT_REST, sleeve.atRest(), ranges.reading(), ranges.sleeveAnswers(), slips, Carry.none());
    }

    private static LengthBlank overSplice(SleeveExposure sleeve, SituationRanges ranges) {
        String ownAtRest = Part.path(SetupPart.SLEEVE.id(), AT_REST);
        Length splice = sleeve.splice();
        List<Slip> slips = List.of(
                new Slip("splice-added", sleeve.atRest().plus(splice)),
                new Slip("splice-left-out", sleeve.atRest()),
                new Slip("wrong-way", sleeve.asSet().plus(sleeve.mountedHigh()).minus(splice)),
                new Slip("mounting-left-out", sleeve.asSet().minus(splice)));
        return new LengthBlank(
                "over-splice",
                sleeve.overSplice(),
                ranges.reading(),
                ranges.sleeveAnswers(),
                slips,
                own -> Optional.of(own.length(ownAtRest, sleeve.atRest()).minus(splice)));
    }
}
