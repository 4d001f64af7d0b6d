package beltmark.core.problem.setup;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Situation;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A set-up at one place.
 *
 * @param situation the place, the hardware and the numbers
 */
public record SetupScene(Situation situation) implements Scene {

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(situation.card());
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("tip", situation.tip().word());
        facts.put("blade", situation.blade());
        facts.put("belt-mark-left", situation.beltMarks().left());
        facts.put("belt-mark-right", situation.beltMarks().right());
        facts.put("floor", situation.surroundings().floor());
        facts.put("roof", situation.surroundings().roof());
        situation.surroundings().obstacles().forEach(obstacle -> {
            String name = obstacle.low().isNegative() ? "obstacle-below" : "obstacle-above";
            facts.put(name + "-low", obstacle.low());
            facts.put(name + "-high", obstacle.high());
        });
        facts.put("mounted-high", situation.mountedHigh());
        facts.put("splice", situation.splice());
        return facts;
    }
}
