package beltmark.core.problem.bank.spring;

import beltmark.core.blade.Assembly;
import beltmark.core.blade.SettingForLoad;
import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Solution;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Angle;
import beltmark.core.units.Force;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A blade on a level belt whose springs are set for a wanted line load.
 *
 * @param card the hardware
 * @param blade the length of the blade
 * @param moving what the springs carry
 * @param wanted the line load
 */
public record LoadScene(HardwareCard card, Length blade, Mass moving, LineLoad wanted) implements Scene {

    /** {@return the spring on each side} */
    public WorkingSpring spring() {
        return card.spring().working();
    }

    /** {@return the load of the blade on the belt} */
    public Force load() {
        return wanted.over(blade);
    }

    /** {@return the setting before rounding, with its steps; throws Refused when the spring cannot give the load} */
    public Solution<SettingForLoad> setting() {
        return SettingForLoad.of(wanted, spring(), card.washer(), new Assembly(moving, Angle.ZERO, blade));
    }

    /** {@return from the top of the washer to the top of the base, to the nearest sixteenth} */
    public Length set() {
        return setting().result().measured().roundedTo(Graduation.SIXTEENTH_INCH);
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("blade", blade);
        facts.put("moving", moving);
        facts.put("wanted", wanted);
        facts.put("rate", spring().rate());
        return facts;
    }
}
