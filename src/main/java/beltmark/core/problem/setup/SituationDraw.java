package beltmark.core.problem.setup;

import beltmark.core.problem.Draw;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.setup.Tip;
import beltmark.core.setup.TipCard;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws situations of one kind of place, one after the other. */
final class SituationDraw {

    /** No gap is drawn nearer to the clearance than this, so that the choice never hangs on a rounded figure. */
    private static final Length LEAST_DOUBT = Length.ofSixteenths(2);

    private final Draw draw;
    private final SituationRanges ranges;
    private final List<HardwareCard> cards;
    private final Place place;

    SituationDraw(Draw draw, SituationRanges ranges, List<HardwareCard> cards, Place place) {
        this.draw = draw;
        this.ranges = ranges;
        this.cards = cards;
        this.place = place;
    }

    /** {@return a situation, or empty when this draw was not of the wanted kind} */
    Optional<Situation> next() {
        HardwareCard card = draw.oneOf(cards);
        Tip tip = draw.oneOf(List.of(Tip.values()));
        Surroundings surroundings = surroundings();
        OrientationChoice choice = OrientationChoice.of(card, tip, surroundings);
        if (Place.of(choice) != place || isDoubtful(choice)) {
            return Optional.empty();
        }
        TipCard.Setting setting = draw.oneOf(card.tip(tip).chart());
        return Optional.of(new Situation(
                card,
                tip,
                setting.blade(),
                beltMarks(),
                surroundings,
                eitherWay(draw.length(ranges.mountedOff())),
                draw.length(ranges.splice())));
    }

    private Sides beltMarks() {
        Length left = draw.length(ranges.beltMark());
        return new Sides(left, left.plus(eitherWay(draw.length(ranges.outOfLevel()))));
    }

    private Surroundings surroundings() {
        Length roof = draw.length(ranges.roof());
        Length floor = draw.length(ranges.floor()).negated();
        List<Reach> obstacles = new ArrayList<>();
        obstacle(floor, roof).ifPresent(obstacles::add);
        return new Surroundings(floor, roof, obstacles);
    }

    /** At half of the places something stands in the way, and is left out where it would stick through floor or roof. */
    private Optional<Reach> obstacle(Length floor, Length roof) {
        Length from = draw.length(ranges.obstacleFrom());
        Length to = from.plus(draw.length(ranges.obstacleSize()));
        Reach reach = draw.below(2) == 0 ? new Reach(from, to) : new Reach(to.negated(), from.negated());
        boolean inside = reach.low().compareTo(floor) > 0 && reach.high().compareTo(roof) < 0;
        return draw.below(2) == 0 && inside ? Optional.of(reach) : Optional.empty();
    }

    private Length eitherWay(Length length) {
        return draw.below(2) == 0 ? length : length.negated();
    }

    private static boolean isDoubtful(OrientationChoice choice) {
        return List.of(Orientation.values()).stream()
                .anyMatch(orientation ->
                        choice.gap(orientation).minus(choice.clearance()).abs().compareTo(LEAST_DOUBT) < 0);
    }
}
