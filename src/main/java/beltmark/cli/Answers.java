package beltmark.cli;

import beltmark.core.problem.Blank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.units.Graduation;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/**
 * Answers to one problem.
 *
 * @param family the family's id
 * @param code the problem's code
 * @param unit the unit of lengths typed without one; sixteenths of an inch when it is not named
 * @param typed what was typed, by part and blank
 */
record Answers(String family, String code, Graduation unit, Map<String, Map<String, String>> typed) {

    private static final Set<String> KEYS = Set.of("family", "code", "unit", "answers");

    /** Reads what stands in a document; throws {@link GradeRefused} for any other form. */
    static Answers read(JsonNode document) {
        document.fieldNames().forEachRemaining(key -> require(KEYS.contains(key)));
        JsonNode unit = document.path("unit");
        Map<String, Map<String, String>> parts = new LinkedHashMap<>();
        JsonNode answers = document.path("answers");
        require(answers.isObject());
        answers.properties().forEach(part -> parts.put(part.getKey(), blanks(part.getValue())));
        return new Answers(
                text(document.path("family")),
                text(document.path("code")),
                unit.isMissingNode() || unit.isNull() ? Graduation.SIXTEENTH_INCH : UnitOption.get(text(unit)),
                parts);
    }

    private static Map<String, String> blanks(JsonNode part) {
        require(part.isObject());
        Map<String, String> blanks = new LinkedHashMap<>();
        part.properties().forEach(blank -> blanks.put(blank.getKey(), answer(blank.getValue())));
        return blanks;
    }

    /** Several picks or an order may be a list, a match may be an object of partners. */
    private static String answer(JsonNode value) {
        if (value.isArray()) {
            return StreamSupport.stream(value.spliterator(), false)
                    .map(Answers::text)
                    .collect(Collectors.joining(" "));
        }
        return value.isObject()
                ? value.properties().stream()
                        .map(pair -> pair.getKey() + ":" + text(pair.getValue()))
                        .collect(Collectors.joining(" "))
                : text(value);
    }

    /** A number may stand without quotation marks. */
    private static String text(JsonNode value) {
        require(value.isTextual() || value.isNumber());
        return value.asText();
    }

    private static void require(boolean asWanted) {
        if (!asWanted) {
            throw new GradeRefused(GradeFault.NOT_ANSWERS);
        }
    }

    /** Throws {@link GradeRefused} for a part or blank that the problem does not have. */
    void requireKnown(Problem problem) {
        typed.forEach((id, blanks) -> requireKnown(
                problem.parts().stream()
                        .filter(part -> part.id().equals(id))
                        .findFirst()
                        .orElseThrow(() -> GradeRefused.unknown(
                                GradeFault.UNKNOWN_PART,
                                id,
                                problem.parts().stream().map(Part::id).toList())),
                blanks.keySet()));
    }

    private static void requireKnown(Part part, Set<String> blanks) {
        List<String> known = part.blanks().stream().map(Blank::id).toList();
        for (String blank : blanks) {
            if (!known.contains(blank)) {
                throw GradeRefused.unknown(GradeFault.UNKNOWN_BLANK, blank, known)
                        .with("part", part.id());
            }
        }
    }
}
