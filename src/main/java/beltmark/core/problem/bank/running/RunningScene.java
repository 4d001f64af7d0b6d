package beltmark.core.problem.bank.running;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A running belt in its numbers.
 *
 * @param findCard the hardware card, where the problem is about one
 * @param beltWidth the width of the belt; nought where it plays no part
 * @param bladeWidth the width of the blade, or of what is dirty; nought where it plays no part
 * @param facts the drawn numbers by name
 */
public record RunningScene(
        Optional<HardwareCard> findCard, Length beltWidth, Length bladeWidth, Map<String, Quantity> facts)
        implements Scene {

    public RunningScene {
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }
}
