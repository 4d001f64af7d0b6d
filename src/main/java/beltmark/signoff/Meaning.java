package beltmark.signoff;

import beltmark.texts.Words;
import java.util.Map;

/**
 * What a signature says.
 *
 * @param sentence as shown
 * @param language the tag of the language it is shown in
 */
public record Meaning(String sentence, String language) {

    /** {@return what signing a demonstration says, which depends on how it came out} */
    public static Meaning of(Words words, String assessor, String person, Demonstration shown) {
        String sentence = words.say(
                "signoff.meaning." + shown.outcome().id(),
                Map.of("assessor", assessor, "person", person, "on", shown.on()));
        return new Meaning(sentence, words.language().tag());
    }
}
