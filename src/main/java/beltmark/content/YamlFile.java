package beltmark.content;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A parsed YAML file that knows on which line each value stands, so that every fault can be told with its line. */
final class YamlFile {

    private static final ObjectMapper MAPPER = new YAMLMapper(YAMLFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build());

    private final String path;
    private final Map<String, Integer> lines;
    private final List<ContentFault> faults;

    private YamlFile(String path, Map<String, Integer> lines, List<ContentFault> faults) {
        this.path = path;
        this.lines = lines;
        this.faults = faults;
    }

    /**
     * Parses a file.
     *
     * @param file the file
     * @param faults where faults of this file are added, now and while its fields are read
     * @return the fields of its top level; empty, so with more faults, when it could not be parsed
     */
    static Fields parse(ContentFile file, List<ContentFault> faults) {
        Map<String, Integer> lines = new HashMap<>();
        YamlFile yaml = new YamlFile(file.path(), lines, faults);
        try {
            JsonNode tree = MAPPER.readTree(file.text());
            readLines(file.text(), lines);
            return new Fields(yaml, tree);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            faults.add(new ContentFault(file.path(), line, "This is not valid YAML: " + e.getOriginalMessage()));
            return new Fields(yaml, JsonNodeFactory.instance.objectNode());
        } catch (IOException e) {
            throw new IllegalStateException("reading from memory failed", e);
        }
    }

    private static void readLines(String text, Map<String, Integer> lines) throws IOException {
        try (JsonParser parser = MAPPER.createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                lines.putIfAbsent(
                        parser.getParsingContext().pathAsPointer().toString(),
                        parser.currentTokenLocation().getLineNr());
            }
        }
    }

    void fault(String pointer, String sentence) {
        faults.add(new ContentFault(path, line(pointer), sentence));
    }

    /** The line of a value, or of the nearest thing around it for a value that is missing. */
    private int line(String pointer) {
        Integer line = lines.get(pointer);
        int slash = pointer.lastIndexOf('/');
        return line != null ? line : slash < 0 ? 1 : line(pointer.substring(0, slash));
    }
}
