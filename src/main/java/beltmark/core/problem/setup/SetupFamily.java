package beltmark.core.problem.setup;

import beltmark.core.problem.Draw;
import beltmark.core.problem.Given;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Situation;
import beltmark.core.units.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * Problems about setting up one cleaner at one place: the whole set-up, or a part of it as a drill.
 *
 * @param id the hyphenated name
 * @param version counts up whenever a code would mean another problem
 * @param parts what is asked, in the order of the job
 * @param places how often each kind of place is drawn
 * @param ranges what is drawn
 * @param cards the hardware that is drawn from
 */
public record SetupFamily(
        String id,
        int version,
        List<SetupPart> parts,
        PlaceWeights places,
        SituationRanges ranges,
        List<HardwareCard> cards)
        implements ProblemFamily {

    private static final int MOST_DRAWS = 2_000;

    public SetupFamily {
        parts = List.copyOf(parts);
        cards = List.copyOf(cards);
    }

    @Override
    public ProblemFamily on(HardwareCard card) {
        return new SetupFamily(id, version, parts, places, ranges, List.of(card));
    }

    @Override
    public Trial trial(ProblemCode code, Draw draw) {
        SituationDraw situations = new SituationDraw(draw, ranges, cards, draw.oneOf(Place.ALL, places.inOrder()));
        for (int draws = 1; draws <= MOST_DRAWS; draws++) {
            Problem problem =
                    situations.next().map(situation -> pose(code, situation)).orElse(null);
            if (problem != null && problem.isFair()) {
                return new Trial(problem, draws);
            }
        }
        throw new IllegalStateException("family " + id + " gives no fair problem for code " + code.text());
    }

    private Problem pose(ProblemCode code, Situation situation) {
        return new Problem(
                id,
                version,
                code,
                new SetupScene(situation),
                givens(situation),
                parts.stream().map(part -> part.pose(situation, ranges)).toList());
    }

    /** What an earlier part of the whole set-up would have found is told where that part is not asked. */
    private List<Given> givens(Situation situation) {
        List<Given> givens = new ArrayList<>();
        givens.add(
                new Given("card", new Word("hardware.name." + situation.card().id())));
        givens.add(new Given("tip", situation.tip().word()));
        givens.add(new Given("blade", situation.blade()));
        if (parts.contains(SetupPart.MOUNT_MARK) && !parts.contains(SetupPart.BELT_MARK)) {
            givens.add(new Given("belt-mark-left", situation.beltMarks().left()));
            givens.add(new Given("belt-mark-right", situation.beltMarks().right()));
        }
        if (parts.contains(SetupPart.MOUNT_MARK) && !parts.contains(SetupPart.ORIENTATION)) {
            situation.orientation().chosen().ifPresent(chosen -> givens.add(new Given("orientation", chosen.word())));
        }
        return givens;
    }
}
