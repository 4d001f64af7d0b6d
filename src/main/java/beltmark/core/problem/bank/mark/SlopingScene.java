package beltmark.core.problem.bank.mark;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Sides;
import beltmark.core.units.Angle;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Belt marks on a sloping belt.
 *
 * @param mounting what is fitted
 * @param beltMarks the belt marks above the foot of each side's tape, which is held square to the belt
 * @param slope of the belt
 */
public record SlopingScene(CupScene.Mounting mounting, Sides beltMarks, Angle slope) implements Scene {

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(mounting.card());
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        mounting.addFacts(facts);
        facts.put("belt-mark-left", beltMarks.left());
        facts.put("belt-mark-right", beltMarks.right());
        facts.put("slope", slope);
        return facts;
    }
}
