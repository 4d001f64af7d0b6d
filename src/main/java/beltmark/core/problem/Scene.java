package beltmark.core.problem;

import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Quantity;
import java.util.Map;
import java.util.Optional;

/** What a problem is about: the drawn numbers, the drawing is made from. Each group of families has its own. */
public interface Scene {

    /** {@return the hardware card, where the problem is about one} */
    Optional<HardwareCard> findCard();

    /** {@return the drawn numbers and words by hyphenated name, as they are kept with every answer} */
    Map<String, Quantity> facts();
}
