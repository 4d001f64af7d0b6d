package beltmark.core.problem.bank.mark;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A bracket that was plumbed on a sloping belt, and two pairs of marks on the structure.
 *
 * @param card the hardware
 * @param blade the length of the blade
 * @param slope of the belt
 * @param bolts how far apart the two bolts of a bracket are, square to the belt
 * @param upperRight whether the upper bolt sits on its mark and the lower one has to move, or the reverse
 * @param marks the marks on the structure
 */
public record BracketScene(HardwareCard card, Length blade, Angle slope, Length bolts, boolean upperRight, Marks marks)
        implements Scene {

    /**
     * Two marks on each side.
     *
     * @param along how far apart they are along the belt, the same on both sides
     * @param first from the rear mark of the left side to the front mark of the right side
     * @param second from the rear mark of the right side to the front mark of the left side
     */
    public record Marks(Length along, Length first, Length second) {}

    /** {@return how far apart the brackets are} */
    public Length span() {
        return card.blade().span(blade);
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("blade", blade);
        facts.put("slope", slope);
        facts.put("bolts", bolts);
        facts.put("upper-on-mark", Ratio.of(upperRight ? 1 : 0));
        facts.put("along", marks.along());
        facts.put("first", marks.first());
        facts.put("second", marks.second());
        return facts;
    }
}
