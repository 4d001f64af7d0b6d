package beltmark.compute;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.NullNode;
import java.io.IOException;

/** Reads lines as JSON, and finds out what can be told of a line that is none. */
final class LineJson {

    private static final JsonMapper STRICT = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    private static final JsonMapper ANY_NUMBER =
            STRICT.rebuild().enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS).build();
    private static final JsonMapper ANY_NAMES = ANY_NUMBER
            .rebuild()
            .disable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /** Reads a part of a line, after which more of it follows. */
    private static final JsonMapper PARTS = ANY_NAMES
            .rebuild()
            .disable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private LineJson() {}

    static JsonNode read(String line) throws JsonProcessingException {
        return STRICT.readTree(line);
    }

    /** {@return whether all that is wrong is a word such as NaN in place of a number} */
    static boolean hasNoNumber(String line) {
        return isRead(ANY_NUMBER, line);
    }

    /** {@return whether all else that is wrong is a name that stands twice in one object} */
    static boolean hasNameTwice(String line) {
        return isRead(ANY_NAMES, line);
    }

    private static boolean isRead(JsonMapper mapper, String line) {
        try {
            mapper.readTree(line);
            return true;
        } catch (JsonProcessingException e) {
            return false;
        }
    }

    /** {@return the id of a line that cannot be read as a whole; null of JSON when none stands before the fault} */
    static JsonNode id(String line) {
        try (JsonParser parser = PARTS.createParser(line)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                boolean isId = parser.currentName().equals("id");
                parser.nextToken();
                if (isId) {
                    return parser.readValueAsTree();
                }
                parser.skipChildren();
            }
            return NullNode.getInstance();
        } catch (IOException e) {
            return NullNode.getInstance();
        }
    }
}
