package beltmark.core.problem.bank.mark;

import beltmark.core.geometry.Cup;
import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Tip;
import beltmark.core.solution.Solution;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A belt that hangs cupped between two posts.
 *
 * @param mounting what is fitted
 * @param edges how high the hanging edges are above the foot of each side's tape
 * @param cup how far the edges rise when the belt is flattened
 * @param tilt of the flattened belt across its travel, against gravity
 */
public record CupScene(Mounting mounting, Sides edges, Length cup, Angle tilt) implements Scene {

    /**
     * What is fitted.
     *
     * @param card the hardware
     * @param tip on the blade
     * @param way round
     * @param blade the length of the blade
     */
    public record Mounting(HardwareCard card, Tip tip, Orientation way, Length blade) {

        /** {@return how far above the belt mark the datum edge goes} */
        public Length offset() {
            return card.mountOffset(tip, way);
        }

        void addFacts(Map<String, Quantity> facts) {
            facts.put("tip", tip.word());
            facts.put("orientation", way.word());
            facts.put("blade", blade);
        }
    }

    /** {@return the belt mark of a side with its step} */
    Solution<Length> beltMark(Side side) {
        return Cup.beltMark(edges.on(side), cup);
    }

    /** {@return the belt marks of both sides, above the foot of each side's tape} */
    public Sides beltMarks() {
        return new Sides(beltMark(Side.LEFT).result(), beltMark(Side.RIGHT).result());
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(mounting.card());
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        mounting.addFacts(facts);
        facts.put("edge-left", edges.left());
        facts.put("edge-right", edges.right());
        facts.put("cup", cup);
        facts.put("tilt", tilt);
        return facts;
    }
}
