package beltmark.core.problem.bank.spring;

import beltmark.core.blade.EdgeLoads;
import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Solution;
import beltmark.core.units.Force;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A blade between two springs that push with different forces, or not at its middle.
 *
 * @param card the hardware
 * @param left the force of the left spring
 * @param right the force of the right spring
 * @param weight of what they carry
 * @param layout where everything is across the belt
 */
public record UnevenScene(HardwareCard card, Force left, Force right, Force weight, EdgeLoads.Layout layout)
        implements Scene {

    /** {@return what the ends feel; throws Refused where the blade would tip over} */
    public Solution<EdgeLoads> ends() {
        return EdgeLoads.fromSprings(left, right, weight, layout);
    }

    /** {@return the load of the blade on the belt} */
    public Force load() {
        return left.plus(right).minus(weight);
    }

    /** {@return how far right of the middle between the springs the load acts} */
    public PreciseLength centre() {
        return EdgeLoads.centreOfPressure(left, right, weight, layout);
    }

    /** {@return the line load if it were even, in newtons per millimetre} */
    double even() {
        return load().newtons() / layout.blade().millimetres();
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("left", left);
        facts.put("right", right);
        facts.put("weight", weight);
        facts.put("span", layout.span());
        facts.put("blade", layout.blade());
        facts.put("blade-off-centre", layout.bladeOffCentre());
        return facts;
    }
}
