package beltmark.texts;

import com.ibm.icu.text.MessageFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** One text, parsed once; most have no arguments and are plain strings. */
final class Message {

    private final MessageFormat format;
    private final Set<String> arguments;
    private final String plain;

    private Message(MessageFormat format) {
        this.format = format;
        this.arguments = Set.copyOf(format.getArgumentNames());
        this.plain = arguments.isEmpty() ? format.format(Map.of()) : "";
    }

    /** {@return the parsed text; throws {@link IllegalArgumentException} when it is no ICU message with named arguments} */
    static Message of(String pattern, Language language) {
        MessageFormat format = new MessageFormat(pattern, language.locale());
        if (!format.getArgumentNames().isEmpty() && !format.usesNamedArguments()) {
            throw new IllegalArgumentException("arguments must have names, not numbers");
        }
        return new Message(format);
    }

    String say(Map<String, ?> values) {
        if (arguments.isEmpty()) {
            return plain;
        }
        if (!values.keySet().containsAll(arguments)) {
            throw new IllegalStateException("needs " + new TreeSet<>(arguments) + " but has " + values.keySet());
        }
        // a MessageFormat must not be used by two threads; its copy is cheap
        return format.clone().format(values);
    }

    String pattern() {
        return format.toPattern();
    }

    Set<String> arguments() {
        return arguments;
    }
}
