package beltmark.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;

/** JSON as the command line reads and prints it. */
final class CliJson {

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

    private CliJson() {}

    static String write(Object value) {
        try {
            return MAPPER.writeValueAsString(value);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the answer of the command cannot be written", e);
        }
    }

    /** {@return the values that follow each other in a stream} */
    static <T> MappingIterator<T> readAll(InputStream in, Class<T> type) throws IOException {
        return MAPPER.readerFor(type).readValues(in);
    }
}
