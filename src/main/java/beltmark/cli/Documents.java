package beltmark.cli;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;

/** JSON documents that follow each other in a text; after one that is no JSON it goes on at the next line that opens one. */
final class Documents {

    private final String text;
    private int start;

    Documents(String text) {
        this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
        passOverBlanks();
    }

    boolean hasNext() {
        return start < text.length();
    }

    /** {@return the next document; throws {@link GradeRefused} when it is no JSON} */
    JsonNode next() {
        StringReader rest = new StringReader(text);
        try (JsonParser parser = CliJson.parser(rest)) {
            rest.skip(start);
            JsonNode document = parser.readValueAsTree();
            start += (int) parser.currentLocation().getCharOffset();
            passOverBlanks();
            return document;
        } catch (JsonProcessingException e) {
            throw passedOver(e.getLocation());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void passOverBlanks() {
        while (start < text.length() && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
    }

    private GradeRefused passedOver(@Nullable JsonLocation location) {
        int read = location == null ? 0 : (int) Math.max(0, location.getCharOffset());
        int end = Math.min(text.length(), start + read);
        long line = 1
                + text.substring(0, end)
                        .chars()
                        .filter(letter -> letter == '\n')
                        .count();
        // what is wrong may have been seen only in the line that opens the next document
        int next = text.indexOf("\n{", Math.max(start + 1, end - 2));
        start = next < 0 ? text.length() : next + 1;
        return new GradeRefused(GradeFault.NOT_JSON).with("line", line);
    }
}
