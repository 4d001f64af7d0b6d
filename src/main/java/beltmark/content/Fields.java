package beltmark.content;

import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthUnit;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The fields of one mapping in a content file. Reading a field that is missing or of the wrong kind adds a fault and
 * goes on with a stand-in, so that all faults of a file are found in one reading; {@link #build} makes nothing from
 * stand-ins.
 */
final class Fields {

    private static final Length STAND_IN_LENGTH = Length.ofMillimetres(1);

    private final YamlFile file;
    private final @Nullable Fields around;
    private final String pointer;
    private final JsonNode node;
    private final Set<String> read = new LinkedHashSet<>();
    private boolean sound = true;

    /** The fields of a file's top level. */
    Fields(YamlFile file, JsonNode node) {
        this(file, null, "", node);
    }

    private Fields(YamlFile file, @Nullable Fields around, String pointer, JsonNode node) {
        this.file = file;
        this.around = around;
        this.pointer = pointer;
        this.node = node;
        if (!node.isObject()) {
            fault(
                    node.isMissingNode()
                            ? "The fields of " + pointer.substring(1) + " are missing."
                            : "Here should be fields, each with a name and a value.");
        }
    }

    /** {@return a text, not blank} */
    String text(String name) {
        return value(
                name,
                "a text",
                node -> Optional.of(node.asText()).filter(text -> node.isValueNode() && !text.isBlank()),
                "?");
    }

    /** {@return one of the named constants} */
    <T> T oneOf(String name, List<T> constants, Function<T, String> id) {
        return value(name, "one of " + known(constants, id), node -> find(node, constants, id), constants.get(0));
    }

    private static <T> String known(List<T> constants, Function<T, String> id) {
        return constants.stream().map(id).collect(Collectors.joining(", "));
    }

    private static <T> Optional<T> find(JsonNode node, List<T> constants, Function<T, String> id) {
        return constants.stream()
                .filter(constant -> id.apply(constant).equals(node.asText()))
                .findFirst();
    }

    /** {@return a whole number, 0 or more} */
    int whole(String name) {
        return value(
                name,
                "a whole number, 0 or more",
                node -> Optional.of(node.asInt()).filter(number -> node.isInt() && number >= 0),
                0);
    }

    /** {@return a number above 0} */
    double number(String name) {
        return value(
                name,
                "a number above 0",
                node -> Optional.of(node.asDouble()).filter(number -> node.isNumber() && number > 0),
                1.0);
    }

    /** {@return a number, 0 or more} */
    double amount(String name) {
        return value(
                name,
                "a number, 0 or more",
                node -> Optional.of(node.asDouble()).filter(number -> node.isNumber() && number >= 0),
                0.0);
    }

    /** {@return whether there is a field of that name, for one that may be left out} */
    boolean has(String name) {
        return node.has(name);
    }

    /** {@return yes or no} */
    boolean yes(String name) {
        return value(
                name, "true or false", node -> Optional.of(node.asBoolean()).filter(flag -> node.isBoolean()), false);
    }

    /** {@return a length, written with its unit} */
    Length length(String name) {
        return value(name, "a length with its unit, such as 4 1/4 in or 50 mm", Fields::toLength, STAND_IN_LENGTH);
    }

    private static Optional<Length> toLength(JsonNode node) {
        String text = node.asText();
        boolean namesUnit = text.endsWith("in") || text.endsWith("mm");
        LengthReading reading = LengthReader.read(text, LengthUnit.MILLIMETRE);
        return node.isTextual() && namesUnit ? Optional.ofNullable(reading.length()) : Optional.empty();
    }

    /** {@return a date, such as 2026-03-05} */
    LocalDate date(String name) {
        return value(name, "a date, such as 2026-03-05", Fields::toDate, LocalDate.EPOCH);
    }

    private static Optional<LocalDate> toDate(JsonNode node) {
        try {
            return Optional.of(LocalDate.parse(node.asText()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** {@return the fields of a mapping in this one} */
    Fields fields(String name) {
        read.add(name);
        return new Fields(file, this, pointer + "/" + name, node.path(name));
    }

    /** {@return the fields of each mapping in a list, which has at least one} */
    List<Fields> list(String name) {
        List<Fields> list = new ArrayList<>();
        int i = 0;
        for (JsonNode item : items(name)) {
            list.add(new Fields(file, this, pointer + "/" + name + "/" + i++, item));
        }
        return list;
    }

    /** {@return the fields of each mapping in a list that may be left out} */
    List<Fields> listIfAny(String name) {
        return has(name) ? list(name) : List.of();
    }

    /** {@return the texts in a list that may be left out} */
    List<String> textsIfAny(String name) {
        return has(name) ? texts(name) : List.of();
    }

    /** {@return the names of the fields, for a mapping whose names are data} */
    List<String> names() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** {@return the texts in a list, which has at least one} */
    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        for (JsonNode item : items(name)) {
            texts.add(item.asText());
        }
        return texts;
    }

    /** {@return the texts in each list of a list} */
    List<List<String>> textLists(String name) {
        List<List<String>> lists = new ArrayList<>();
        for (JsonNode list : items(name)) {
            List<String> texts = new ArrayList<>();
            list.forEach(item -> texts.add(item.asText()));
            lists.add(texts);
        }
        return lists;
    }

    /** {@return the named constants in a list, which has at least one} */
    <T> List<T> listOf(String name, List<T> constants, Function<T, String> id) {
        List<T> list = new ArrayList<>();
        for (JsonNode item : items(name)) {
            find(item, constants, id)
                    .ifPresentOrElse(
                            list::add,
                            () -> faultAt(name, "\"" + item.asText() + "\" is none of " + known(constants, id) + "."));
        }
        return list;
    }

    private JsonNode items(String name) {
        read.add(name);
        JsonNode items = node.path(name);
        if (!items.isArray() || items.isEmpty()) {
            faultAt(name, "The field " + name + " must be a list with at least one item.");
        }
        return items;
    }

    private <T> T value(String name, String kind, Function<JsonNode, Optional<T>> reader, T standIn) {
        read.add(name);
        JsonNode value = node.path(name);
        if (value.isMissingNode() || value.isNull()) {
            fault("The field " + name + " is missing; it must be " + kind + ".");
            return standIn;
        }
        return reader.apply(value).orElseGet(() -> {
            faultAt(name, "The field " + name + " is \"" + value.asText() + "\"; it must be " + kind + ".");
            return standIn;
        });
    }

    /** {@return whether neither this mapping nor one within it has a fault so far} */
    boolean isSound() {
        return sound;
    }

    /** Adds a fault about this mapping. */
    void fault(String sentence) {
        markUnsound();
        file.fault(pointer, sentence);
    }

    /** Adds a fault about one field. */
    void faultAt(String name, String sentence) {
        markUnsound();
        file.fault(pointer + "/" + name, sentence);
    }

    private void markUnsound() {
        sound = false;
        if (around != null) {
            around.markUnsound();
        }
    }

    /**
     * Makes something of the fields that were read. Fields nobody read are faults; an argument that the maker refuses is
     * a fault with the maker's own words.
     *
     * @return what was made, or empty when this mapping, or one within it, has a fault
     */
    <T> Optional<T> build(Supplier<T> maker) {
        node.fieldNames().forEachRemaining(name -> {
            if (!read.contains(name)) {
                faultAt(name, "There is no field " + name + " here; known are " + String.join(", ", read) + ".");
            }
        });
        return make(maker);
    }

    /** {@return something made of some of the fields, or empty when one of them, or the maker, has a fault} */
    <T> Optional<T> make(Supplier<T> maker) {
        if (!sound) {
            return Optional.empty();
        }
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException e) {
            fault("This cannot be: " + e.getMessage() + ".");
            return Optional.empty();
        }
    }
}
