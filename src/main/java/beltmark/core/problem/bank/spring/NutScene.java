package beltmark.core.problem.bank.spring;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Side;
import beltmark.core.setup.Sides;
import beltmark.core.units.Length;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Two springs to be brought to the same length by turning their nuts.
 *
 * @param card the hardware
 * @param present how they are set, over the washer
 * @param wanted how they should be set
 * @param thread of the rods
 */
public record NutScene(HardwareCard card, Sides present, Length wanted, RodThread thread) implements Scene {

    /**
     * The thread of a rod.
     *
     * @param pitch from one turn to the next
     * @param perInch how many threads per inch, 0 for a thread that is told by its pitch
     */
    public record RodThread(Length pitch, int perInch) {

        /** {@return how it is told: the pitch, or the threads per inch} */
        Quantity told() {
            return perInch == 0 ? new PreciseLength(pitch.millimetres()) : new Ratio(perInch);
        }
    }

    /** {@return how much longer a spring has to get; negative to shorten it} */
    public Length change(Side side) {
        return wanted.minus(present.on(side));
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("present-left", present.left());
        facts.put("present-right", present.right());
        facts.put("wanted", wanted);
        facts.put("pitch", thread.pitch);
        facts.put("threads-per-inch", new Ratio(thread.perInch));
        return facts;
    }
}
