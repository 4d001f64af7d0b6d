package beltmark.compute;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** Lists everything that can be computed, one line of JSON for each quantity. */
public final class Listing {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Listing() {}

    /** {@return the lines, grouped as in the registry} */
    public static List<String> lines() {
        return Calculations.list().stream().map(Listing::line).toList();
    }

    private static String line(Calculation<?> calculation) {
        ObjectNode line = NODES.objectNode().put("quantity", calculation.name());
        ArrayNode aliases = line.putArray("also");
        calculation.aliases().forEach(aliases::add);
        ArrayNode given = line.putArray("given");
        calculation.fields().forEach(field -> given.add(field(field)));
        ArrayNode results = line.putArray("results");
        calculation
                .outputs()
                .forEach(output ->
                        results.addObject().put("field", output.name()).put("unit", output.unit()));
        return line.toString();
    }

    private static ObjectNode field(Field field) {
        ObjectNode node = NODES.objectNode()
                .put("field", field.usualName())
                .put("unit", field.kind().units().get(0).symbol())
                .put("required", field.required())
                .put("type", type(field.kind()));
        ArrayNode also = node.putArray("also");
        field.otherNames().forEach(also::add);
        if (!field.choices().isEmpty()) {
            ArrayNode choices = node.putArray("choices");
            field.choices().forEach(choices::add);
        }
        return node;
    }

    private static String type(Kind kind) {
        return switch (kind) {
            case NUMBERS, LENGTHS -> "numbers";
            case REACHES -> "pairs";
            case CHOICE -> "choice";
            case TEXT -> "text";
            case FLAG -> "flag";
            default -> "number";
        };
    }
}
