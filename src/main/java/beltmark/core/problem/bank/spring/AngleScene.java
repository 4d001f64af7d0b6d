package beltmark.core.problem.bank.spring;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A blade at an angle to a belt, and a tip on an arm beside it. Angles to the belt are on the side it comes from.
 *
 * @param present as the blade stands
 * @param wanted as it should stand
 * @param slope of the belt, positive where it runs up along its travel
 * @param arm the arm
 */
public record AngleScene(Angle present, Angle wanted, Angle slope, Arm arm) implements Scene {

    /**
     * A tip on a pivoted arm.
     *
     * @param length of the arm
     * @param height of the belt over the pivot as meant
     * @param low how far too low the pivot was mounted, so that the arm reaches that much higher
     */
    public record Arm(Length length, Length height, Length low) {}

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.empty();
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("present", present);
        facts.put("wanted", wanted);
        facts.put("slope", slope);
        facts.put("arm", arm.length);
        facts.put("arm-height", arm.height);
        facts.put("arm-low", arm.low);
        return facts;
    }
}
