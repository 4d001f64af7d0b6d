package beltmark.texts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Compares the keys that templates and code name with the texts there are. A key is named as a whole in one literal, such
 * as {@code text("web.site.name")}; where it must be put together, its prefix stands in {@code dynamic-texts.txt}.
 */
class TextKeysTest {

    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)+)\"");
    private static final Pattern ASKED =
            Pattern.compile("(?:text|say|new Word)\\(\\s*\"([a-z][a-z0-9-]*\\.(?:[a-z0-9-]+\\.?)*)\"\\s*([,)+])");

    private static final Set<String> KEYS = Texts.load(ZoneOffset.UTC).keys();
    private static final Set<String> LITERALS = new TreeSet<>();
    private static final Set<String> ASKED_WHOLE = new TreeSet<>();
    private static final Set<String> ASKED_PREFIXES = new TreeSet<>();
    private static final List<String> DYNAMIC = new ArrayList<>();

    @BeforeAll
    static void readSources() throws IOException {
        for (String folder : List.of("src/main/java", "src/main/jte")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    read(Files.readString(file));
                }
            }
        }
        Files.readAllLines(Path.of("src/test/resources/dynamic-texts.txt")).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .forEach(line -> DYNAMIC.add(line.split("\\s+", 2)[0]));
    }

    private static void read(String source) {
        LITERAL.matcher(source).results().forEach(found -> LITERALS.add(found.group(1)));
        Matcher asked = ASKED.matcher(source);
        while (asked.find()) {
            (asked.group(2).equals("+") ? ASKED_PREFIXES : ASKED_WHOLE).add(asked.group(1));
        }
    }

    @Test
    void everyKeyThatIsAskedForExists() {
        assertEquals(Set.of(), missing(ASKED_WHOLE, KEYS), "add these to content/texts, in every language");
    }

    private static Set<String> missing(Set<String> asked, Set<String> keys) {
        Set<String> missing = new TreeSet<>(asked);
        missing.removeAll(keys);
        return missing;
    }

    @Test
    void everyTextIsUsed() {
        assertEquals(Set.of(), unused(KEYS), "take these out, or name their prefix in dynamic-texts.txt");
    }

    private static Set<String> unused(Set<String> keys) {
        Set<String> unused = new TreeSet<>(keys);
        unused.removeAll(LITERALS);
        unused.removeIf(key -> DYNAMIC.stream().anyMatch(key::startsWith));
        return unused;
    }

    @Test
    void findsAPlantedTextAndAPlantedQuestion() {
        Set<String> keys = new TreeSet<>(KEYS);
        keys.add("web.planted");
        assertEquals(Set.of("web.planted"), unused(keys));
        Set<String> asked = new TreeSet<>(ASKED_WHOLE);
        asked.add("web.planted");
        assertEquals(Set.of("web.planted"), missing(asked, KEYS));
    }

    @Test
    void everyPrefixThatIsCompletedAtRunTimeIsDeclared() {
        Set<String> undeclared = new TreeSet<>(ASKED_PREFIXES);
        undeclared.removeIf(prefix -> DYNAMIC.stream().anyMatch(prefix::startsWith));
        assertEquals(Set.of(), undeclared, "declare these in dynamic-texts.txt");
    }
}
