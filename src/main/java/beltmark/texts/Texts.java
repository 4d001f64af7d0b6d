package beltmark.texts;

import beltmark.content.ContentFault;
import beltmark.content.ContentFaults;
import beltmark.content.ContentFile;
import beltmark.core.units.Graduation;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/** All texts of all languages that have any, read and parsed once at start. */
public final class Texts {

    private static final String FOLDER = "content/texts";

    private final Map<Language, Map<String, Message>> byLanguage;
    private final Map<Language, Glossary> glossaries = new EnumMap<>(Language.class);
    private final ZoneId zone;

    private Texts(Map<Language, Map<String, Message>> byLanguage, ZoneId zone) {
        this.byLanguage = byLanguage;
        this.zone = zone;
        byLanguage.keySet().forEach(language -> glossaries.put(language, Glossary.of(language, byLanguage)));
    }

    /** {@return the texts that are shipped with the program, with dates in the time zone of the site} */
    public static Texts load(ZoneId zone) {
        return load(ContentFile.list(FOLDER), zone);
    }

    /**
     * Reads text files.
     *
     * @param files paths end in {@code <language>/<topic>.yaml}, or in {@code <language>/<topic>/<part>.yaml} for a
     *     topic in several files; other files are a fault
     * @param zone the time zone that times are told in
     * @return the texts; throws {@link ContentFaults} with every fault of every file
     */
    public static Texts load(List<ContentFile> files, ZoneId zone) {
        List<ContentFault> faults = new ArrayList<>();
        Map<Language, Map<String, Message>> texts = new EnumMap<>(Language.class);
        for (ContentFile file : files) {
            readFile(file, texts, faults);
        }
        compareLanguages(texts, faults);
        if (!texts.containsKey(Language.EN)) {
            faults.add(new ContentFault(FOLDER + "/en", 0, "there are no English texts"));
        }
        if (!faults.isEmpty()) {
            throw new ContentFaults(faults);
        }
        return new Texts(texts, zone);
    }

    private static void readFile(
            ContentFile file, Map<Language, Map<String, Message>> texts, List<ContentFault> faults) {
        for (Language language : Language.values()) {
            if (file.path().matches(".*/" + language.tag() + "/([a-z0-9-]+/)?[a-z0-9-]+\\.yaml")) {
                new TextFile(file, language, faults).readInto(texts.computeIfAbsent(language, l -> new TreeMap<>()));
                return;
            }
        }
        faults.add(new ContentFault(file.path(), 0, "is not named <language>/<topic>.yaml in a known language"));
    }

    /** A language is offered whole or not at all: the same keys with the same arguments as English. */
    private static void compareLanguages(Map<Language, Map<String, Message>> texts, List<ContentFault> faults) {
        Map<String, Message> english = texts.getOrDefault(Language.EN, Map.of());
        texts.forEach((language, own) -> {
            SortedSet<String> keys = new TreeSet<>(english.keySet());
            keys.addAll(own.keySet());
            for (String key : keys) {
                Message there = english.get(key);
                Message here = own.get(key);
                if (there == null || here == null || !there.arguments().equals(here.arguments())) {
                    faults.add(new ContentFault(
                            FOLDER + "/" + language.tag(),
                            0,
                            key + " is not the same key with the same values as in en"));
                }
            }
        });
    }

    /** {@return the languages that can be chosen} */
    public Set<Language> languages() {
        return Collections.unmodifiableSet(byLanguage.keySet());
    }

    /** {@return every key there is} */
    public Set<String> keys() {
        return byLanguage.getOrDefault(Language.EN, Map.of()).keySet();
    }

    /** {@return the texts of one language as they are written, by key} */
    Map<String, String> patterns(Language language) {
        Map<String, String> patterns = new TreeMap<>();
        byLanguage.getOrDefault(language, Map.of()).forEach((key, message) -> patterns.put(key, message.pattern()));
        return patterns;
    }

    /** {@return the texts of one language for a person who reads that graduation} */
    public Words words(Language language, Graduation graduation) {
        Map<String, Message> texts = byLanguage.get(language);
        Glossary glossary = glossaries.get(language);
        if (texts == null || glossary == null) {
            throw new IllegalStateException("there are no texts in " + language);
        }
        return new Words(texts, glossary, language, graduation, zone);
    }
}
