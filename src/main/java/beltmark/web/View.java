package beltmark.web;

import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.texts.Term;
import beltmark.texts.Words;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** What every template of one request may use: the texts of the person, who that is, and the token of its forms. */
public final class View {

    private final Words words;
    private final @Nullable Visitor visitor;
    private final List<LanguageWay> languages;
    private final String csrf;
    private final boolean demo;
    private final UnaryOperator<String> assets;
    private boolean refused;
    private boolean focused;

    @SuppressWarnings("TooManyParameters") // what every page has
    View(
            Words words,
            @Nullable Visitor visitor,
            List<LanguageWay> languages,
            String csrf,
            boolean demo,
            UnaryOperator<String> assets) {
        this.words = words;
        this.visitor = visitor;
        this.languages = List.copyOf(languages);
        this.csrf = csrf;
        this.demo = demo;
        this.assets = assets;
    }

    /** {@return the texts in the person's language and graduation} */
    public Words words() {
        return words;
    }

    /** {@return the text of a key; the values that it names follow as name, value, name, value} */
    public String text(String key, Object... namedValues) {
        if (namedValues.length == 0) {
            return words.say(key);
        }
        Map<String, Object> values = new HashMap<>();
        for (int i = 0; i < namedValues.length; i += 2) {
            values.put((String) namedValues[i], namedValues[i + 1]);
        }
        return words.say(key, values);
    }

    /** {@return the text of a key with the values that it names} */
    public String text(String key, Map<String, ?> values) {
        return words.say(key, values);
    }

    /** {@return a length in the person's graduation, with its unit} */
    public String length(Length length) {
        return words.length(length);
    }

    /** {@return a quantity as the person reads it} */
    public String quantity(Quantity quantity) {
        return words.quantity(quantity);
    }

    /** {@return the words of the trade that occur in what a page says} */
    public List<Term> terms(Collection<String> sentences) {
        return words.glossary().findIn(sentences);
    }

    /** {@return the token that a form must send back} */
    public String csrf() {
        return csrf;
    }

    /** {@return who is signed in, null before sign-in} */
    public @Nullable Visitor visitor() {
        return visitor;
    }

    /** {@return the languages this page can be had in; none once somebody is signed in, who has settings for it} */
    public List<LanguageWay> languages() {
        return languages;
    }

    /** {@return whether somebody is signed in who has that job role} */
    public boolean has(Role role) {
        return visitor != null && visitor.has(role);
    }

    /** {@return whether the site shows invented demo data} */
    public boolean demo() {
        return demo;
    }

    /** Says that what was sent could not be taken, so that the page begins with that. */
    void refuse() {
        refused = true;
    }

    /** {@return the title for the browser, which a screen reader says first; it tells when something was refused} */
    public String pageTitle(String title) {
        return refused ? text("web.refused-title", "title", title) : title;
    }

    /** {@return whether a field with that error takes the focus: the first one on the page that has any} */
    public boolean takesFocus(@Nullable String error) {
        boolean first = error != null && !focused;
        focused = focused || first;
        return first;
    }

    /** {@return the address of a static file, such as {@code beltmark.css}} */
    public String asset(String name) {
        return assets.apply(name);
    }
}
