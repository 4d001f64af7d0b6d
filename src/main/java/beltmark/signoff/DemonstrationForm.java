package beltmark.signoff;

import beltmark.core.setup.Measure;
import beltmark.core.setup.Side;
import beltmark.web.Form;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The sign-off form as it was sent, whatever was typed.
 *
 * @param typed the fields by name
 * @param observed the observations that were ticked
 */
public record DemonstrationForm(Map<String, String> typed, Set<String> observed) {

    static final String BLADE = "blade";
    static final String ORIENTATION = "orientation";
    static final String CONVEYOR = "conveyor";
    static final String ON = "on";
    static final String OBSERVED = "observed";

    public DemonstrationForm {
        typed = Map.copyOf(typed);
        observed = Set.copyOf(observed);
    }

    /** {@return the form before anything is typed} */
    static DemonstrationForm blank(LocalDate today) {
        return new DemonstrationForm(Map.of(ON, today.toString()), Set.of());
    }

    /** {@return the form before anything is typed, but with what an address carries along, as from a set-up sheet} */
    static DemonstrationForm started(Form address, LocalDate today) {
        Map<String, String> typed = new HashMap<>(blank(today).typed);
        carried(address).forEach((name, text) -> typed.merge(name, text, (standard, carried) -> carried));
        return new DemonstrationForm(typed, Set.of());
    }

    /** {@return what an address may carry along, as far as it does; what was left at the end is always measured} */
    static Map<String, String> carried(Form address) {
        Map<String, String> carried = new LinkedHashMap<>();
        Stream.of(BLADE, ORIENTATION, CONVEYOR, name(Measure.BELT_MARK, Side.LEFT), name(Measure.BELT_MARK, Side.RIGHT))
                .filter(name -> !address.text(name).isEmpty())
                .forEach(name -> carried.put(name, address.text(name)));
        return carried;
    }

    static DemonstrationForm of(Form form) {
        Map<String, String> typed = new HashMap<>();
        fields().forEach(name -> typed.put(name, form.text(name)));
        return new DemonstrationForm(typed, Set.copyOf(form.all(OBSERVED)));
    }

    /** {@return the names of all fields that are typed or picked} */
    static List<String> fields() {
        List<String> fields = new ArrayList<>(List.of(BLADE, ORIENTATION, CONVEYOR, ON));
        for (Measure measure : Measure.values()) {
            for (Side side : Side.values()) {
                fields.add(name(measure, side));
            }
        }
        return fields;
    }

    static String name(Measure measure, Side side) {
        return measure.id() + "-" + side.id();
    }

    String value(String name) {
        return typed.getOrDefault(name, "");
    }
}
