package beltmark.core.problem.bank.mark;

import beltmark.core.geometry.Centring;
import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A pole across the conveyor with the blade on it.
 *
 * @param card the hardware
 * @param widths inside the structure, of the belt and of the blade
 * @param outside the outside width of the structure
 * @param offsets where belt and blade are
 */
public record PoleScene(HardwareCard card, Centring.Widths widths, Length outside, Offsets offsets) implements Scene {

    /**
     * Where belt and blade are.
     *
     * @param belt how far right of the middle between the walls the belt runs
     * @param blade how far right of the middle of the belt the blade was found
     * @param mistracking how far the belt wanders to either side
     */
    public record Offsets(Length belt, Length blade, Length mistracking) {}

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("inside", widths.inside());
        facts.put("outside", outside);
        facts.put("belt", widths.belt());
        facts.put("blade", widths.blade());
        facts.put("belt-offset", offsets.belt());
        facts.put("blade-offset", offsets.blade());
        facts.put("mistracking", offsets.mistracking());
        return facts;
    }
}
