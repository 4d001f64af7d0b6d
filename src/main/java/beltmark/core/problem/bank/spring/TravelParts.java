package beltmark.core.problem.bank.spring;

import beltmark.core.blade.SpliceCheck;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.solution.Slip;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import beltmark.core.units.PreciseLength;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is asked of the travel of a cleaner; each part builds on the ones before. */
final class TravelParts {

    private static final String SLEEVE = "travel-sleeve";
    private static final String COILS = "travel-coils";
    private static final String LIMIT = "travel-limit";
    private static final String VALUE = "value";
    private static final String SLEEVE_ENDS = "travel-sleeve-ends";
    private static final String COILS_END = "travel-coils-end";
    private static final String PASSES = "travel-passes";
    private static final String STRIKES = "travel-strikes";

    private final TravelScene scene;
    private final LengthSpan span;
    private final SpliceCheck check;
    private final Length showing;
    private final Length springTravel;

    TravelParts(TravelScene scene, FamilyRanges ranges) {
        this.scene = scene;
        this.span = ranges.span("travel");
        this.check = scene.check();
        this.showing = scene.sleeve().result();
        this.springTravel = scene.springTravel();
    }

    static void check(FamilyRanges ranges) {
        ranges.span("travel");
    }

    Part sleeve() {
        Length asSet = scene.card().sleeve();
        Length high = scene.mountedHigh();
        List<Slip> slips = List.of(
                new Slip("mounting-wrong-way", asSet.plus(high).plus(scene.wear())),
                new Slip("wear-taken-off", asSet.minus(high).minus(scene.wear())),
                new Slip("mounting-left-out", asSet.plus(scene.wear())),
                new Slip("wear-left-out", asSet.minus(high)));
        return new Part(
                SLEEVE,
                List.of(
                        new Given("sleeve-as-set", asSet),
                        new Given(high.isNegative() ? "mounted-low" : "mounted-high", high.abs()),
                        new Given("travel-wear", scene.wear())),
                List.of(length(VALUE, showing, slips, Carry.none())),
                List.of(Step.of(high.isNegative() ? "travel-sleeve-low" : "travel-sleeve-high", "asSet", asSet)
                        .with("off", high.abs())
                        .with("wear", scene.wear())
                        .with("left", showing)));
    }

    Part coils() {
        Length solid = scene.card().spring().solidLength();
        Length gaps = scene.gaps();
        Length wire = scene.card().spring().wire();
        List<Slip> slips = List.of(
                new Slip("washer-forgotten", springTravel.plus(scene.card().washer())),
                new Slip("gaps-left-out", springTravel.plus(gaps)),
                new Slip("end-coils-left-out", springTravel.plus(wire.times(2))));
        return new Part(
                COILS,
                List.of(
                        new Given("travel-set", scene.set()),
                        new Given("load-washer", scene.card().washer()),
                        new Given("travel-solid", new PreciseLength(solid.millimetres())),
                        new Given("travel-gaps", new PreciseLength(gaps.millimetres()))),
                List.of(length(VALUE, springTravel, slips, Carry.none())),
                List.of(Step.of("travel-coils", "set", scene.set())
                        .with("washer", scene.card().washer())
                        .with("solid", new PreciseLength(solid.millimetres()))
                        .with("gaps", new PreciseLength(gaps.millimetres()))
                        .with("travel", springTravel)));
    }

    Part limit() {
        boolean sleeveEnds = showing.compareTo(springTravel) <= 0;
        List<Slip> slips = List.of(
                new Slip("larger-taken", Length.max(showing, springTravel)),
                new Slip("both-added", showing.plus(springTravel)),
                new Slip("average-taken", showing.plus(springTravel).times(0.5)));
        return new Part(
                LIMIT,
                List.of(),
                List.of(
                        new ChoiceBlank(
                                "end",
                                List.of(SLEEVE_ENDS, COILS_END),
                                sleeveEnds ? SLEEVE_ENDS : COILS_END,
                                Map.of(sleeveEnds ? COILS_END : SLEEVE_ENDS, "larger-taken"),
                                own -> Optional.of(
                                        ownSleeve(own).compareTo(ownCoils(own)) <= 0 ? SLEEVE_ENDS : COILS_END)),
                        length(VALUE, check.travel(), slips, own -> Optional.of(ownTravel(own)))),
                List.of(Step.of("splice-travel", "exposure", showing)
                        .with("springTravel", springTravel)
                        .with("travel", check.travel())));
    }

    private Length ownSleeve(OwnFigures own) {
        return own.length(Part.path(SLEEVE, VALUE), showing);
    }

    private Length ownCoils(OwnFigures own) {
        return own.length(Part.path(COILS, VALUE), springTravel);
    }

    private Length ownTravel(OwnFigures own) {
        return Length.min(ownSleeve(own), ownCoils(own));
    }

    Part splice() {
        boolean passes = !scene.margin().isNegative();
        Length other = Length.max(showing, springTravel);
        List<Slip> slips = List.of(
                new Slip("splice-added", check.travel().plus(scene.splice())),
                new Slip("splice-left-out", check.travel()),
                new Slip("larger-taken", other.minus(scene.splice()).abs()));
        return new Part(
                "travel-splice",
                List.of(new Given("splice", scene.splice())),
                List.of(
                        new ChoiceBlank(
                                "passes",
                                List.of(PASSES, STRIKES),
                                passes ? PASSES : STRIKES,
                                Map.of(passes ? STRIKES : PASSES, passes ? "margin-overlooked" : "shortage-overlooked"),
                                own -> Optional.of(left(own).isNegative() ? STRIKES : PASSES)),
                        length(
                                "margin",
                                scene.margin().abs(),
                                slips,
                                own -> Optional.of(left(own).abs()))),
                List.of(Step.of(passes ? "travel-margin" : "travel-shortage", "travel", check.travel())
                        .with("splice", scene.splice())
                        .with("margin", scene.margin().abs())));
    }

    private Length left(OwnFigures own) {
        return own.length(Part.path(LIMIT, VALUE), check.travel()).minus(scene.splice());
    }

    private LengthBlank length(String id, Length right, List<Slip> slips, Carry<Length> carry) {
        return new LengthBlank(id, right, Blanks.SETTING, span, slips, carry);
    }
}
