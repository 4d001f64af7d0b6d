package beltmark.core.problem.bank.kit;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.MountMarks;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Tip;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A tensioner that is turned over.
 *
 * @param card the hardware
 * @param tip the tip on the blade
 * @param now which way round it goes afterwards
 * @param beltMarks the belt marks, above the foot of the tape
 */
record TurningScene(HardwareCard card, Tip tip, Orientation now, Sides beltMarks) implements Scene {

    MountMarks mountMarks() {
        return new MountMarks(beltMarks, card.mountOffset(tip, now));
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("tip", tip.word());
        facts.put("orientation", now.word());
        facts.put("belt-mark-left", beltMarks.left());
        facts.put("belt-mark-right", beltMarks.right());
        return facts;
    }
}
