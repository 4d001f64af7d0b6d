package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.content.Checklist.Observation;
import beltmark.core.setup.Measure;
import beltmark.core.setup.Side;
import beltmark.web.Form;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The sign-off form as it was sent, whatever was typed.
 *
 * @param typed the fields by name
 */
public record DemonstrationForm(Map<String, String> typed) {

    static final String BLADE = "blade";
    static final String ORIENTATION = "orientation";
    static final String CONVEYOR = "conveyor";
    static final String ON = "on";
    static final String EDGE_LEFT = "edge-left";
    static final String EDGE_RIGHT = "edge-right";
    static final String ANGLE = "blade-angle";
    static final String BOUNCE = "bounce";
    static final String SPLICE = "splice";
    static final String TRAINED = "trained";
    static final String ENTERED_AT = "entered-at";

    private static final String SEEN = "seen-";
    private static final String EXPLAIN = "explain-";

    public DemonstrationForm {
        typed = Map.copyOf(typed);
    }

    /** {@return the form before anything is typed} */
    static DemonstrationForm blank(LocalDate today) {
        return new DemonstrationForm(Map.of(ON, today.toString()));
    }

    /** {@return the form before anything is typed, but with what an address carries along, as from a set-up sheet} */
    static DemonstrationForm started(Form address, LocalDate today) {
        Map<String, String> typed = new HashMap<>(blank(today).typed);
        carried(address).forEach((name, text) -> typed.merge(name, text, (standard, carried) -> carried));
        return new DemonstrationForm(typed);
    }

    /** {@return what an address may carry along, as far as it does; what was left at the end is always measured} */
    static Map<String, String> carried(Form address) {
        Map<String, String> carried = new LinkedHashMap<>();
        Stream.of(BLADE, ORIENTATION, CONVEYOR, name(Measure.BELT_MARK, Side.LEFT), name(Measure.BELT_MARK, Side.RIGHT))
                .filter(name -> !address.text(name).isEmpty())
                .forEach(name -> carried.put(name, address.text(name)));
        return carried;
    }

    static DemonstrationForm of(Form form, Checklist checklist) {
        Map<String, String> typed = new HashMap<>();
        fields(checklist).forEach(name -> typed.put(name, form.text(name)));
        return new DemonstrationForm(typed);
    }

    /** {@return the names of all fields that are typed or picked} */
    static List<String> fields(Checklist checklist) {
        List<String> fields = new ArrayList<>(List.of(CONVEYOR, ON, TRAINED, ENTERED_AT));
        fields.addAll(measured());
        checklist.observations().stream().map(DemonstrationForm::name).forEach(fields::add);
        Findings.names().stream().map(DemonstrationForm::explain).forEach(fields::add);
        return fields;
    }

    /** {@return the names of the fields for what is measured or read at the hardware} */
    static List<String> measured() {
        List<String> fields = new ArrayList<>(List.of(BLADE, ORIENTATION));
        for (Measure measure : Measure.values()) {
            for (Side side : Side.values()) {
                fields.add(name(measure, side));
            }
        }
        fields.addAll(List.of(EDGE_LEFT, EDGE_RIGHT, ANGLE, BOUNCE, SPLICE));
        return fields;
    }

    static String name(Measure measure, Side side) {
        return measure.id() + "-" + side.id();
    }

    static String name(Observation observation) {
        return SEEN + observation.id();
    }

    /** {@return the name of the field that explains why something beyond its tolerance stays as it is} */
    static String explain(String beyond) {
        return EXPLAIN + beyond;
    }

    String value(String name) {
        return typed.getOrDefault(name, "");
    }

    /** {@return whether everything at the hardware was measured, readable or not} */
    boolean isAllMeasured() {
        return measured().stream().noneMatch(name -> value(name).isEmpty());
    }
}
