package beltmark.compute;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Writes answers as JSON. */
final class AnswerJson {

    private final JsonNodeFactory nodes = JsonNodeFactory.instance;
    private final Sentences words;

    AnswerJson(Sentences words) {
        this.words = words;
    }

    /** The figures; the one that is meant when one speaks of the quantity also as {@code value} with its unit. */
    ObjectNode computed(JsonNode id, Calculation<?> calculation, Computed computed) {
        ObjectNode answer = nodes.objectNode();
        answer.set("id", id);
        answer.put("quantity", calculation.name());
        Quantity first = computed.figures().values().iterator().next();
        put(answer, "value", first);
        answer.put("unit", first.unit());
        computed.figures().forEach((name, figure) -> put(answer, name, figure));
        ArrayNode steps = answer.putArray("steps");
        computed.steps().forEach(step -> steps.add(step(step)));
        ArrayNode warnings = answer.putArray("warnings");
        computed.warnings().stream().distinct().forEach(warning -> warnings.add(warning.name()));
        if (!warnings.isEmpty()) {
            ArrayNode doubts = answer.putArray("doubts");
            computed.warnings().stream().distinct().map(Warning::key).forEach(key -> doubts.add(words.say(key)));
        }
        return answer;
    }

    private ObjectNode step(Step step) {
        ObjectNode node = nodes.objectNode();
        node.put("step", step.id());
        node.put("says", words.say(key(step), step.values()));
        ObjectNode values = node.putObject("values");
        step.values().forEach((name, value) -> {
            ObjectNode told = values.putObject(name);
            put(told, "value", value);
            told.put("unit", value.unit());
        });
        return node;
    }

    /** The steps of a set-up have their own sentences, which its pages show too. */
    private String key(Step step) {
        String own = "step." + step.id();
        return words.has(own) ? own : "setup.step." + step.id();
    }

    private static void put(ObjectNode node, String name, Quantity figure) {
        if (figure instanceof Word word) {
            node.put(name, word.key().substring(word.key().lastIndexOf('.') + 1));
        } else if (figure instanceof PrintedLength length) {
            node.put(name, length.text());
        } else {
            node.put(name, figure.amount());
        }
    }

    ObjectNode refused(JsonNode id, Refused refused) {
        ObjectNode answer = refused(
                id, refused.refusal().name(), words.say(refused.refusal().key(), refused.values()));
        Object field = refused.values().get("field");
        return field == null ? answer : answer.put("field", field.toString());
    }

    /** A refusal of the line itself, with the fields that are expected where it is about fields. */
    ObjectNode refused(JsonNode id, LineRefused refused, String expected) {
        Map<String, Object> values = new HashMap<>(refused.values());
        values.put("expected", expected);
        if (values.get("reading") instanceof Enum<?> fault) {
            values.put("reading", words.say("reading.fault." + hyphenated(fault)));
        }
        String sentence = words.say(refused.fault().key(), values);
        if (!expected.isEmpty()) {
            sentence += " " + words.say("compute.expected", values);
        }
        ObjectNode answer = refused(id, refused.fault().name(), sentence);
        Object field = values.get("field");
        return field == null ? answer : answer.put("field", field.toString());
    }

    ObjectNode refused(JsonNode id, String code, String because) {
        ObjectNode answer = nodes.objectNode();
        answer.set("id", id);
        return answer.put("refused", code).put("because", because);
    }

    private static String hyphenated(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
