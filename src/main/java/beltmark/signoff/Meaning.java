package beltmark.signoff;

import beltmark.texts.Words;
import java.time.LocalDate;
import java.util.Map;

/**
 * What a signature says.
 *
 * @param sentence as shown
 * @param language the tag of the language it is shown in
 */
public record Meaning(String sentence, String language) {

    /** {@return what signing a demonstration says} */
    public static Meaning of(Words words, String assessor, String person, LocalDate on) {
        String sentence = words.say("signoff.meaning", Map.of("assessor", assessor, "person", person, "on", on));
        return new Meaning(sentence, words.language().tag());
    }
}
