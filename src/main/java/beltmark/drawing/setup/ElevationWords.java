package beltmark.drawing.setup;

import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.units.Length;
import beltmark.texts.Words;
import java.util.Map;

/** What the elevations say to people who hear them: what is given first, results only where they are told. */
final class ElevationWords {

    private final Situation situation;
    private final Words words;

    ElevationWords(Situation situation, Words words) {
        this.situation = situation;
        this.words = words;
    }

    /** {@return the surroundings and how far each way of mounting reaches} */
    String surroundings() {
        Surroundings place = situation.surroundings();
        StringBuilder text = new StringBuilder(words.say(
                "drawing.orientation.place",
                Map.of("roof", place.roof(), "floor", place.floor().abs())));
        for (Reach obstacle : place.obstacles()) {
            text.append(' ').append(obstacle(obstacle));
        }
        for (Orientation orientation : Orientation.values()) {
            text.append(' ').append(reach(orientation));
        }
        return text.toString();
    }

    /** {@return the same, followed by the gaps and the choice} */
    String choice() {
        OrientationChoice choice = situation.orientation();
        StringBuilder text = new StringBuilder(surroundings());
        for (Orientation orientation : Orientation.values()) {
            text.append(' ')
                    .append(words.say(
                            "drawing.orientation.verdict."
                                    + Fit.of(choice, orientation).id(),
                            Map.of(
                                    "orientation", name(orientation),
                                    "gap", choice.gap(orientation).abs())));
        }
        return text.toString();
    }

    private String obstacle(Reach obstacle) {
        boolean above = obstacle.low().compareTo(Length.ZERO) >= 0;
        return words.say(
                above ? "drawing.orientation.obstacle-above" : "drawing.orientation.obstacle-below",
                Map.of(
                        "from", above ? obstacle.low() : obstacle.high().abs(),
                        "to", above ? obstacle.high() : obstacle.low().abs()));
    }

    private String reach(Orientation orientation) {
        Reach reach = situation.card().reachFromBeltMark(situation.tip(), orientation);
        return words.say(
                "drawing.orientation.reach",
                Map.of(
                        "orientation", name(orientation),
                        "above", reach.high(),
                        "below", reach.low().abs()));
    }

    private String name(Orientation orientation) {
        return words.say("drawing.orientation." + orientation.id());
    }
}
