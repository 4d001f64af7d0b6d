package beltmark.compute;

import java.util.ArrayList;
import java.util.List;

/**
 * A field of what is given for a quantity.
 *
 * @param name without the unit, such as {@code wire}
 * @param kind what it holds
 * @param required whether it must be there; one that is not has a usual value or is one of several ways to say it
 * @param aliases other names without the unit
 * @param choices the words that may stand there; empty unless it is a choice
 */
record Field(String name, Kind kind, boolean required, List<String> aliases, List<String> choices) {

    static Field of(String name, Kind kind) {
        return new Field(name, kind, true, List.of(), List.of());
    }

    static Field choice(String name, List<String> choices) {
        return new Field(name, Kind.CHOICE, true, List.of(), choices);
    }

    Field optional() {
        return new Field(name, kind, false, aliases, choices);
    }

    Field also(String... others) {
        return new Field(name, kind, required, List.of(others), choices);
    }

    /** {@return the name with the usual unit, such as {@code wireMm}} */
    String usualName() {
        return named(name, kind.units().get(0));
    }

    /** {@return the names with the other units and the other names with all of them} */
    List<String> otherNames() {
        List<String> names = new ArrayList<>();
        for (Kind.Unit unit : kind.units()) {
            names.add(named(name, unit));
        }
        names.remove(0);
        for (String alias : aliases) {
            kind.units().forEach(unit -> names.add(named(alias, unit)));
        }
        return names;
    }

    /** {@return a name with a unit; the unit alone, in small letters first, for an empty name} */
    static String named(String name, Kind.Unit unit) {
        String suffix = unit.suffix();
        return name.isEmpty() ? Character.toLowerCase(suffix.charAt(0)) + suffix.substring(1) : name + suffix;
    }
}
