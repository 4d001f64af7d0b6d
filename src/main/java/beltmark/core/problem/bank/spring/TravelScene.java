package beltmark.core.problem.bank.spring;

import beltmark.core.blade.Assembly;
import beltmark.core.blade.BladeLoad;
import beltmark.core.blade.SpliceCheck;
import beltmark.core.blade.SpringLengths;
import beltmark.core.geometry.Exposure;
import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Solution;
import beltmark.core.spring.CoilGaps;
import beltmark.core.spring.CompressionSpring;
import beltmark.core.units.Angle;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A cleaner as found, and the splice that has to pass.
 *
 * @param card the hardware
 * @param blade the length of the blade
 * @param set the springs over the washer, as found
 * @param mountedHigh how far above its mark the tensioner is; negative when below
 * @param wear of the tip
 * @param splice the height of the tallest splice
 */
public record TravelScene(HardwareCard card, Length blade, Length set, Length mountedHigh, Length wear, Length splice)
        implements Scene {

    /** {@return the sleeve that shows, with its steps} */
    public Solution<Length> sleeve() {
        return Exposure.after(card.sleeve(), mountedHigh, wear, Length.ZERO);
    }

    /** {@return the coil without the washer} */
    public Length coil() {
        return set.minus(card.washer());
    }

    /** {@return the least sum of gaps to keep between the coils} */
    public Length gaps() {
        CompressionSpring spring = card.spring();
        return CoilGaps.sum(spring.wire(), spring.meanCoil(), spring.activeCoils(), false)
                .result();
    }

    /** {@return how far the springs can still shorten} */
    public Length springTravel() {
        return coil().minus(CoilGaps.shortestLength(card.spring().solidLength(), gaps())
                .result());
    }

    /** {@return what ends the travel; throws Refused where the springs are loose or bound} */
    public SpliceCheck check() {
        SpringLengths both = new SpringLengths(set, set, card.washer());
        Assembly assembly = new Assembly(card.blade().moving(blade), Angle.ZERO, blade);
        Force load = BladeLoad.square(card.spring().working(), both, assembly)
                .result()
                .load();
        SpliceCheck.Room room = new SpliceCheck.Room(sleeve().result(), gaps());
        return SpliceCheck.of(card.spring().working(), coil(), load, room, Length.ZERO)
                .result();
    }

    /** {@return the travel less the splice; negative when it strikes, also where the coils would touch first} */
    public Length margin() {
        return check().travel().minus(splice);
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("blade", blade);
        facts.put("set", set);
        facts.put("mounted-high", mountedHigh);
        facts.put("wear", wear);
        facts.put("splice", splice);
        return facts;
    }
}
