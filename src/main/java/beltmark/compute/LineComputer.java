package beltmark.compute;

import beltmark.core.refusal.Refused;
import beltmark.texts.Words;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * Answers lines: {@code {"id", "quantity", "given": {…}}} becomes the figures with the steps that led to them, or why there
 * are none. Never throws for what stands in a line.
 */
public final class LineComputer {

    private static final Set<String> KEYS = Set.of("id", "quantity", "given");

    private final Map<Calculation<?>, FieldNames> names = new HashMap<>();
    private final AnswerJson answers;
    private final Words words;

    /** Makes one that tells its sentences in those words. */
    public LineComputer(Words words) {
        this.words = words;
        this.answers = new AnswerJson(new Sentences(words));
        Calculations.list().forEach(calculation -> names.put(calculation, new FieldNames(calculation)));
    }

    /**
     * Answers one line.
     *
     * @param line one JSON object
     * @param number of the line, from 1, for refusals
     * @return one JSON object on one line
     */
    public String answer(String line, long number) {
        return answer(line).put("line", number).toString();
    }

    /** {@return the answer to a line that is too long to be read} */
    public String tooLong(long number) {
        String sentence = words.say("compute.too-long");
        return answers.refused(NullNode.getInstance(), LineFault.BAD_LINE.name(), sentence)
                .put("line", number)
                .toString();
    }

    private ObjectNode answer(String text) {
        JsonNode line;
        try {
            line = LineJson.read(text);
        } catch (JsonProcessingException e) {
            String sentence = words.say(LineFault.BAD_LINE.key(), Map.of("problem", problem(text, e)));
            return answers.refused(LineJson.id(text), LineFault.BAD_LINE.name(), sentence);
        }
        JsonNode id = line.path("id").isMissingNode() ? NullNode.getInstance() : line.path("id");
        try {
            return answer(id, line);
        } catch (LineRefused refused) {
            return answers.refused(id, refused, "");
        }
    }

    private String problem(String text, JsonProcessingException fault) {
        if (LineJson.hasNoNumber(text)) {
            return words.say("compute.no-number");
        }
        if (LineJson.hasNameTwice(text)) {
            return words.say("compute.name-twice");
        }
        int column = fault.getLocation() == null ? 1 : fault.getLocation().getColumnNr();
        return words.say("compute.broken", Map.of("column", column));
    }

    private ObjectNode answer(JsonNode id, JsonNode line) {
        if (!line.isObject()) {
            throw new LineRefused(LineFault.BAD_LINE).with("problem", words.say("compute.no-object"));
        }
        line.fieldNames().forEachRemaining(LineComputer::requireKnown);
        JsonNode quantity = require(line, "quantity");
        JsonNode given = require(line, "given");
        if (!quantity.isTextual()) {
            throw new LineRefused(LineFault.NOT_A_TEXT).with("field", "quantity");
        }
        if (!given.isObject()) {
            throw new LineRefused(LineFault.BAD_LINE).with("problem", words.say("compute.given-no-object"));
        }
        String name = quantity.textValue();
        Calculation<?> calculation = Calculations.find(name)
                .orElseThrow(() -> new LineRefused(LineFault.UNKNOWN_QUANTITY).with("quantity", name));
        return compute(id, calculation, given);
    }

    private static void requireKnown(String key) {
        if (!KEYS.contains(key)) {
            throw new LineRefused(LineFault.UNKNOWN_FIELD).with("field", key);
        }
    }

    private static JsonNode require(JsonNode line, String key) {
        JsonNode value = line.path(key);
        if (value.isMissingNode() || value.isNull()) {
            throw new LineRefused(LineFault.MISSING_FIELD).with("field", key);
        }
        return value;
    }

    private ObjectNode compute(JsonNode id, Calculation<?> calculation, JsonNode given) {
        FieldNames fields = names.get(calculation);
        if (fields == null) {
            throw new IllegalStateException("no field names for " + calculation.name());
        }
        GivenReader reader = new GivenReader(fields);
        try {
            return answers.computed(id, calculation, calculation.compute(reader.read(given)));
        } catch (LineRefused refused) {
            if (refused.values().get("field") instanceof String field && refused.fault() != LineFault.UNKNOWN_FIELD) {
                refused.with("field", reader.typedName(field));
            }
            return answers.refused(id, refused, fields.expected());
        } catch (Refused refused) {
            return answers.refused(id, named(refused, fields, reader));
        }
    }

    /** A refusal of the core with the name that stands in the line in place of the core's own. */
    private static Refused named(Refused refused, FieldNames fields, GivenReader reader) {
        String name = reader.typedName(String.valueOf(refused.values().get("what")));
        return fields.find(name).isEmpty()
                ? refused
                : refused.with("what", name).with("field", name);
    }
}
