package beltmark.texts;

import java.util.Locale;

/** The languages that texts may be written in; offered only when there is a folder of texts for it. */
public enum Language {
    /** English. */
    EN("en", "en", "English"),
    /** Spanish, as the trade speaks it in Latin America. */
    ES("es", "es-419", "Español");

    private final String tag;
    private final Locale locale;
    private final String ownName;

    Language(String tag, String locale, String ownName) {
        this.tag = tag;
        this.locale = Locale.forLanguageTag(locale);
        this.ownName = ownName;
    }

    /** {@return the language of a tag; refuses an unknown one} */
    public static Language ofTag(String tag) {
        for (Language language : values()) {
            if (language.tag.equals(tag)) {
                return language;
            }
        }
        throw new IllegalArgumentException("no language " + tag);
    }

    /** {@return the language tag, which is also the name of the text folder} */
    public String tag() {
        return tag;
    }

    /** {@return what the language calls itself; the only text outside the text files, the same in all of them} */
    public String ownName() {
        return ownName;
    }

    /**
     * {@return the locale that numbers and dates follow; Spanish is that of Latin America, which writes a decimal point as the
     * tapes and cards of the trade do}
     */
    public Locale locale() {
        return locale;
    }
}
