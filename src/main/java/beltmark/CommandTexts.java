package beltmark;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.Enumeration;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The help texts of the commands, from the text file {@code commands.yaml}; picocli asks for them by command and option. */
final class CommandTexts extends ResourceBundle {

    private static final String ASKED = "beltmark.";
    private static final String KEPT = "commands.";

    private final Words words;
    private final Set<String> keys;

    CommandTexts() {
        Texts texts = Texts.load(ZoneOffset.UTC);
        words = texts.words(Language.EN, Graduation.SIXTEENTH_INCH);
        keys = texts.keys().stream()
                .filter(key -> key.startsWith(KEPT))
                .map(key -> ASKED + key.substring(KEPT.length()))
                .collect(Collectors.toUnmodifiableSet());
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        return keys.contains(key) ? words.say(KEPT + key.substring(ASKED.length())) : null;
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(keys);
    }
}
