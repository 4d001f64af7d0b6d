package beltmark.core.problem.bank.spring;

import beltmark.core.blade.Bounce;
import beltmark.core.blade.BushingBand;
import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Side;
import beltmark.core.units.Force;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.Mass;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import beltmark.core.units.SpringRate;
import beltmark.core.units.Word;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A cleaner that was pushed down by hand with the belt locked out, and how it came back.
 *
 * @param card the hardware
 * @param mass what swings, the springs' share too
 * @param net what the springs press with, less the weight
 * @param friction the rubbing in the guide, as a share of the load
 * @param seen what was seen
 */
public record BounceScene(HardwareCard card, Mass mass, Force net, Ratio friction, Seen seen) implements Scene {

    /**
     * What was seen.
     *
     * @param finding what is behind it
     * @param side the side that shows it, where it is one side
     * @param swings how often it swung in a second
     * @param drop how far it went down
     */
    public record Seen(Finding finding, Side side, Frequency swings, Length drop) {

        /** {@return whether a side shows what is wrong} */
        public boolean shows(Finding wanted, Side other) {
            return finding == wanted && side == other;
        }
    }

    /** {@return the rate of each spring} */
    public SpringRate rate() {
        return card.spring().rate();
    }

    /** {@return how often it should swing in a second} */
    public Frequency expected() {
        return Bounce.frequency(rate(), mass, new Mass(0)).result();
    }

    /** {@return between which loads friction lets the blade rest; one guide whose rubbing is the given share} */
    BushingBand band() {
        BushingBand.Guide guide = new BushingBand.Guide(friction, new Ratio(1), Length.ZERO, Length.ofMillimetres(1));
        return BushingBand.of(net, guide).result();
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("rate", rate());
        facts.put("mass", mass);
        facts.put("net", net);
        facts.put("friction", friction);
        facts.put("finding", new Word("problem.option." + seen.finding.cause()));
        facts.put("side", new Word("drawing.side." + seen.side.id()));
        facts.put("swings", seen.swings);
        facts.put("drop", seen.drop);
        return facts;
    }
}
