package beltmark.core.problem.setup;

import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Given;
import beltmark.core.problem.Part;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Picking which way round the tensioner goes. */
final class OrientationPart {

    static final String BLANK = "way";
    static final String NEITHER = "neither";

    private static final List<String> OPTIONS =
            List.of(Orientation.OVERSLUNG.id(), Orientation.UNDERSLUNG.id(), NEITHER);

    private OrientationPart() {}

    static Part of(Situation situation) {
        OrientationChoice choice = situation.orientation();
        String right = choice.chosen().map(Orientation::id).orElse(NEITHER);
        return new Part(
                SetupPart.ORIENTATION.id(),
                givens(situation),
                List.of(new ChoiceBlank(BLANK, OPTIONS, right, slips(choice, right))),
                choice.steps());
    }

    private static List<Given> givens(Situation situation) {
        HardwareCard card = situation.card();
        Surroundings place = situation.surroundings();
        List<Given> givens = new ArrayList<>();
        givens.add(new Given("clearance", card.clearance()));
        givens.add(new Given("roof", place.roof()));
        givens.add(new Given("floor", place.floor().abs()));
        place.obstacles().forEach(obstacle -> {
            boolean above = obstacle.low().compareTo(Length.ZERO) >= 0;
            String id = above ? "obstacle-above" : "obstacle-below";
            Length near = above ? obstacle.low() : obstacle.high().abs();
            Length far = above ? obstacle.high() : obstacle.low().abs();
            givens.add(new Given(id + "-from", near));
            givens.add(new Given(id + "-to", far));
        });
        for (Orientation orientation : Orientation.values()) {
            givens.add(new Given(
                    orientation.id() + "-above",
                    card.reachFromBeltMark(situation.tip(), orientation).high()));
            givens.add(new Given(
                    orientation.id() + "-below",
                    card.reachFromBeltMark(situation.tip(), orientation).low().abs()));
        }
        return givens;
    }

    private static Map<String, String> slips(OrientationChoice choice, String right) {
        Map<String, String> slips = new HashMap<>();
        for (Orientation orientation : Orientation.values()) {
            slips.put(orientation.id(), slipOfMounting(choice, orientation));
        }
        slips.put(NEITHER, right.equals(Orientation.OVERSLUNG.id()) ? "gave-up" : "turning-over-forgotten");
        slips.remove(right);
        return slips;
    }

    private static String slipOfMounting(OrientationChoice choice, Orientation orientation) {
        if (choice.fits(orientation)) {
            return "turned-over-without-need";
        }
        return choice.gap(orientation).isNegative() ? "obstacle-overlooked" : "clearance-forgotten";
    }
}
