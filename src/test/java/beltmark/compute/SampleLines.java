package beltmark.compute;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** The rows of the tables as lines of the compute command. */
final class SampleLines {

    static final LineComputer COMPUTER =
            new LineComputer(Texts.load(ZoneOffset.UTC).words(Language.EN, Graduation.MILLIMETRE));
    private static final ObjectMapper JSON = new ObjectMapper();

    private SampleLines() {}

    /** A line from {@code name=value} pairs. */
    static ObjectNode line(String quantity, String given) {
        ObjectNode line = JSON.createObjectNode().put("id", 1).put("quantity", quantity);
        ObjectNode fields = line.putObject("given");
        for (String pair : given.split(" ", -1)) {
            String[] parts = pair.split("=", 2);
            fields.set(parts[0], value(parts[1]));
        }
        return line;
    }

    private static JsonNode value(String text) {
        try {
            return text.matches("[-\\[].*|[0-9.]+(e[0-9]+)?|true|false")
                    ? JSON.readTree(text)
                    : JSON.getNodeFactory().textNode(text);
        } catch (IOException e) {
            return JSON.getNodeFactory().textNode(text);
        }
    }

    static JsonNode answer(JsonNode line) {
        return parse(COMPUTER.answer(line.toString(), 1));
    }

    static JsonNode parse(String text) {
        try {
            return JSON.readTree(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The unit that the list names for a figure. */
    static String unitOf(String quantity, String field) {
        for (Output<?> output : Calculations.find(quantity).orElseThrow().outputs()) {
            if (output.name().equals(field)) {
                return output.unit();
            }
        }
        throw new IllegalArgumentException(quantity + " has no " + field);
    }

    static List<ObjectNode> all() {
        List<ObjectNode> lines = new ArrayList<>();
        for (String file : List.of("published-examples", "right-and-wrong", "other-samples")) {
            try {
                Files.readAllLines(Path.of("src/test/resources/compute/" + file + ".csv")).stream()
                        .skip(1)
                        .filter(row -> !row.startsWith("#"))
                        .map(row -> row.split(";", -1))
                        .forEach(row -> lines.add(line(row[0], row[1])));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return lines;
    }
}
