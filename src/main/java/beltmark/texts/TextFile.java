package beltmark.texts;

import beltmark.content.ContentFault;
import beltmark.content.ContentFile;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;

/**
 * Reads one file of texts: nested keys become {@code topic.key.sub}, where the topic is the name of the file. Reads on
 * after a fault, so that one start shows all of them.
 */
final class TextFile {

    private static final String KEY = "[a-z0-9]+(-[a-z0-9]+)*";

    private final ContentFile file;
    private final Language language;
    private final List<ContentFault> faults;
    private final Deque<String> path = new ArrayDeque<>();

    TextFile(ContentFile file, Language language, List<ContentFault> faults) {
        this.file = file;
        this.language = language;
        this.faults = faults;
    }

    /** Adds every text of this file, and every fault to the list of faults. */
    void readInto(Map<String, Message> texts) {
        try (JsonParser parser = new YAMLFactory().createParser(file.text())) {
            path.push(topic());
            while (parser.nextToken() != null) {
                read(parser, texts);
            }
        } catch (JsonProcessingException e) {
            faults.add(new ContentFault(file.path(), e.getLocation().getLineNr(), e.getOriginalMessage()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The folder below the language for a topic in several files, else the name of the file. */
    private String topic() {
        String below = file.path().replaceFirst(".*/" + language.tag() + "/", "");
        return below.contains("/") ? below.substring(0, below.indexOf('/')) : below.replaceFirst("\\.yaml$", "");
    }

    private void read(JsonParser parser, Map<String, Message> texts) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.FIELD_NAME) {
            path.push(path.peek() + "." + checkedKey(parser));
        } else if (token == JsonToken.END_OBJECT) {
            path.pop();
        } else if (token == JsonToken.VALUE_STRING) {
            add(parser, texts);
            path.pop();
        } else if (token.isScalarValue()) {
            fault(parser, path.pop() + " is not a text; put it in quotation marks");
        } else if (token == JsonToken.START_ARRAY) {
            fault(parser, path.pop() + " is a list; texts have keys");
            parser.skipChildren();
        }
    }

    private String checkedKey(JsonParser parser) throws IOException {
        String key = parser.currentName();
        if (!key.matches(KEY)) {
            fault(parser, "key " + key + " must be small letters, digits and hyphens");
        }
        return key;
    }

    private void add(JsonParser parser, Map<String, Message> texts) throws IOException {
        String key = path.element();
        try {
            if (parser.getText().isBlank()) {
                fault(parser, key + " is empty");
            }
            if (texts.putIfAbsent(key, Message.of(parser.getText(), language)) != null) {
                fault(parser, key + " is there twice");
            }
        } catch (IllegalArgumentException e) {
            fault(parser, key + " cannot be read: " + e.getMessage());
        }
    }

    private void fault(JsonParser parser, String text) {
        faults.add(new ContentFault(file.path(), parser.currentTokenLocation().getLineNr(), text));
    }
}
