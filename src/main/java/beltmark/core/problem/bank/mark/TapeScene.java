package beltmark.core.problem.bank.mark;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Side;
import beltmark.core.units.Graduated;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A tape held at a mark on each side: on the left with a sound hook, on the right with a broken one.
 *
 * @param tape the divisions of both tapes
 * @param left where the left mark lies on its tape
 * @param right where the right mark lies on its tape
 * @param heldBy the line by which the right tape is held at the foot plate
 */
public record TapeScene(Graduation tape, Length left, Length right, Length heldBy) implements Scene {

    /** {@return where the mark of a side lies on its tape} */
    public Length at(Side side) {
        return side == Side.LEFT ? left : right;
    }

    /** {@return what the tapes are divided into, in words} */
    Word word() {
        return new Word("problem.tape." + tape.name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.empty();
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("tape", word());
        facts.put("left", new Graduated(left, tape));
        facts.put("right", new Graduated(right, tape));
        facts.put("held-by", new Graduated(heldBy, tape));
        return facts;
    }
}
