package beltmark.core.problem.bank.job;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A job in its drawn words and numbers; nothing of it is drawn to scale.
 *
 * @param findCard the hardware card, where the problem is about one
 * @param facts the drawn words and numbers by name
 */
public record JobScene(Optional<HardwareCard> findCard, Map<String, Quantity> facts) implements Scene {

    public JobScene {
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
    }

    /** {@return an option as a word} */
    static Word word(String option) {
        return new Word("problem.option." + option);
    }
}
