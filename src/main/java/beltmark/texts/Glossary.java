package beltmark.texts;

import java.text.Collator;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The words of the trade in one language, from its file {@code glossary.yaml}, each with the word of the other language. */
public final class Glossary {

    private static final String PREFIX = "glossary.term.";
    private static final String WORD = ".word";

    private final Map<String, Term> byId = new LinkedHashMap<>();
    private final TermFinder finder;

    private Glossary(List<Term> terms, TermFinder finder) {
        terms.forEach(term -> byId.put(term.id(), term));
        this.finder = finder;
    }

    /** {@return the glossary of a language; without terms where its texts have none} */
    static Glossary of(Language language, Map<Language, Map<String, Message>> texts) {
        Language other = texts.keySet().stream()
                .filter(candidate -> candidate != language)
                .findFirst()
                .orElse(language);
        Map<String, Message> own = texts.getOrDefault(language, Map.of());
        Map<String, Message> others = texts.getOrDefault(other, Map.of());
        Map<String, String> idByForm = new HashMap<>();
        List<Term> terms = own.keySet().stream()
                .filter(key -> key.startsWith(PREFIX) && key.endsWith(WORD))
                .map(key -> key.substring(PREFIX.length(), key.length() - WORD.length()))
                .map(id -> new Term(id, say(own, id, WORD), say(own, id, ".means"), say(others, id, WORD), other))
                .sorted(Comparator.comparing(Term::word, Collator.getInstance(language.locale())))
                .toList();
        terms.forEach(term -> Arrays.stream(say(own, term.id(), ".found").split(", "))
                .forEach(form -> idByForm.put(form, term.id())));
        return new Glossary(terms, new TermFinder(idByForm));
    }

    private static String say(Map<String, Message> texts, String id, String ending) {
        Message message = texts.get(PREFIX + id + ending);
        if (message == null) {
            throw new IllegalStateException("there is no text " + PREFIX + id + ending);
        }
        return message.say(Map.of());
    }

    /** {@return all terms, as this language sorts them} */
    public List<Term> terms() {
        return List.copyOf(byId.values());
    }

    /** {@return the terms that occur in sentences, in the order in which they do} */
    public List<Term> findIn(Collection<String> sentences) {
        return finder.find(sentences).stream().map(byId::get).toList();
    }
}
