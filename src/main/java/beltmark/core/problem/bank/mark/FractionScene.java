package beltmark.core.problem.bank.mark;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Graduated;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Marks on a post and a width, all in inches and sixteenths.
 *
 * @param beltMark a belt mark above the foot of the tape
 * @param offset from it up to the mount mark
 * @param upper another mark above the foot of the tape
 * @param drop how far below it a lower mark is wanted
 * @param width of a frame whose middle is wanted
 */
public record FractionScene(Length beltMark, Length offset, Length upper, Length drop, Length width) implements Scene {

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.empty();
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("belt-mark", inches(beltMark));
        facts.put("offset", inches(offset));
        facts.put("upper", inches(upper));
        facts.put("drop", inches(drop));
        facts.put("width", inches(width));
        return facts;
    }

    /** {@return a length as an inch tape prints it, for everybody: the fractions are what is practised} */
    public static Graduated inches(Length length) {
        return new Graduated(length, Graduation.SIXTEENTH_INCH);
    }
}
