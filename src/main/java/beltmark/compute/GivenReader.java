package beltmark.compute;

import beltmark.core.refusal.Refused;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.Limits;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Quantity;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads what is given for one quantity; every name may have any unit of its kind, in any case of letters. */
final class GivenReader {

    private final FieldNames names;
    private final Map<String, Object> values = new LinkedHashMap<>();
    private final Map<String, String> typed = new LinkedHashMap<>();

    GivenReader(FieldNames names) {
        this.names = names;
    }

    Given read(JsonNode given) {
        given.properties().forEach(entry -> read(entry.getKey(), entry.getValue()));
        names.required().forEach(this::requireThere);
        return new Given(values);
    }

    /** {@return the name that stands in the line for a name without unit, or the usual one; itself when it is no field} */
    String typedName(String name) {
        return typed.containsValue(name)
                ? name
                : names.field(name)
                        .map(field -> typed.getOrDefault(field.name(), field.usualName()))
                        .orElse(name);
    }

    private void requireThere(Field field) {
        if (!values.containsKey(field.name())) {
            throw new LineRefused(LineFault.MISSING_FIELD).with("field", field.usualName());
        }
    }

    private void read(String name, JsonNode value) {
        FieldNames.Named named =
                names.find(name).orElseThrow(() -> new LineRefused(LineFault.UNKNOWN_FIELD).with("field", name));
        if (value.isNull()) {
            return;
        }
        typed.put(named.field().name(), name);
        if (values.put(named.field().name(), value(name, named, value)) != null) {
            throw new LineRefused(LineFault.FIELD_TWICE).with("field", name);
        }
    }

    private static Object value(String name, FieldNames.Named named, JsonNode value) {
        Kind.Unit unit = named.unit();
        return switch (named.field().kind()) {
            case LENGTH -> length(name, unit, value);
            case NUMBERS -> numbers(name, value);
            case LENGTHS -> lengths(name, unit, value);
            case REACHES -> reaches(name, unit, value);
            case CHOICE -> choice(name, named.field().choices(), value);
            case TEXT -> text(name, value);
            case FLAG -> flag(name, value);
            default -> quantity(name, unit, value);
        };
    }

    private static double number(String name, JsonNode value) {
        if (!value.isNumber()) {
            throw new LineRefused(LineFault.NOT_A_NUMBER).with("field", name);
        }
        return Limits.finite(name, value.doubleValue());
    }

    private static Quantity quantity(String name, Kind.Unit unit, JsonNode value) {
        try {
            return unit.reader().apply(number(name, value));
        } catch (Refused refused) {
            throw refused.with("what", name);
        }
    }

    /** A length in inches may be a text, so that it can be a fraction. */
    private static Length length(String name, Kind.Unit unit, JsonNode value) {
        Length length = value.isTextual() && unit.symbol().equals(LengthUnit.INCH.symbol())
                ? fraction(name, value.textValue())
                : (Length) quantity(name, unit, value);
        return Limits.signed(name, length);
    }

    private static Length fraction(String name, String text) {
        LengthReading reading = LengthReader.read(text, LengthUnit.INCH);
        LengthReading.Fault fault = reading.fault();
        if (fault != null) {
            throw new LineRefused(LineFault.NOT_A_LENGTH).with("field", name).with("reading", fault);
        }
        return reading.getLength();
    }

    private static List<Double> numbers(String name, JsonNode value) {
        List<Double> numbers = new ArrayList<>();
        members(name, value).forEach(member -> numbers.add(number(name, member)));
        return numbers;
    }

    private static List<PreciseLength> lengths(String name, Kind.Unit unit, JsonNode value) {
        double factor = unit.symbol().equals(LengthUnit.INCH.symbol()) ? 25.4 : 1;
        List<PreciseLength> lengths = new ArrayList<>();
        members(name, value)
                .forEach(member -> lengths.add(new PreciseLength(Limits.finite(name, factor * number(name, member)))));
        return lengths;
    }

    private static List<Length[]> reaches(String name, Kind.Unit unit, JsonNode value) {
        List<Length[]> reaches = new ArrayList<>();
        for (JsonNode pair : members(name, value)) {
            if (!pair.isArray() || pair.size() != 2) {
                throw new LineRefused(LineFault.NOT_A_LIST).with("field", name);
            }
            reaches.add(new Length[] {length(name, unit, pair.get(0)), length(name, unit, pair.get(1))});
        }
        return reaches;
    }

    private static JsonNode members(String name, JsonNode value) {
        if (!value.isArray()) {
            throw new LineRefused(LineFault.NOT_A_LIST).with("field", name);
        }
        return value;
    }

    private static String choice(String name, List<String> choices, JsonNode value) {
        if (!value.isTextual() || !choices.contains(value.textValue())) {
            throw new LineRefused(LineFault.NOT_A_CHOICE)
                    .with("field", name)
                    .with("choices", String.join(", ", choices));
        }
        return value.textValue();
    }

    private static String text(String name, JsonNode value) {
        if (!value.isTextual()) {
            throw new LineRefused(LineFault.NOT_A_TEXT).with("field", name);
        }
        return value.textValue();
    }

    private static Boolean flag(String name, JsonNode value) {
        if (!value.isBoolean()) {
            throw new LineRefused(LineFault.NOT_TRUE_OR_FALSE).with("field", name);
        }
        return value.booleanValue();
    }
}
