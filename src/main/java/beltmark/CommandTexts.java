package beltmark;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The help texts of the commands, from the text file {@code commands.yaml}; picocli asks for them by command and option. */
final class CommandTexts extends ResourceBundle {

    private static final String ASKED = "beltmark.";
    private static final String KEPT = "commands.";

    private final Words words;
    private final Map<String, String> keptByAsked;

    CommandTexts() {
        Texts texts = Texts.load(ZoneOffset.UTC);
        words = texts.words(Language.EN, Graduation.SIXTEENTH_INCH);
        keptByAsked = texts.keys().stream()
                .filter(key -> key.startsWith(KEPT))
                .collect(Collectors.toUnmodifiableMap(CommandTexts::asked, key -> key));
    }

    /** The key as picocli asks for it; the text files know no capitals. */
    private static String asked(String kept) {
        return ASKED
                + kept.substring(KEPT.length())
                        .replace("exit-code-list-heading", "exitCodeListHeading")
                        .replace("exit-code-list", "exitCodeList");
    }

    @Override
    protected @Nullable Object handleGetObject(String key) {
        String kept = keptByAsked.get(key);
        return kept == null ? null : words.say(kept);
    }

    @Override
    public Enumeration<String> getKeys() {
        return Collections.enumeration(keptByAsked.keySet());
    }
}
