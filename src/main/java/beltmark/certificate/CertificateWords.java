package beltmark.certificate;

import beltmark.texts.Words;

/**
 * Says what stands on a certificate.
 *
 * @param words the language
 */
public record CertificateWords(Words words) {

    /** {@return the name of a qualification; its id once no rule names it any more} */
    public String qualification(String id) {
        return named("qualification.name.", id);
    }

    /** {@return the name of a hardware card; its id once there is none any more} */
    public String card(String id) {
        return named("hardware.name.", id);
    }

    /** {@return what a certificate is worth, in a word or two} */
    public String state(CertificateState state) {
        return words.say("certificate.state." + state.word());
    }

    /** {@return what that means, in a sentence} */
    public String meaning(CertificateState state) {
        return words.say("certificate.meaning." + state.word());
    }

    private String named(String prefix, String id) {
        return words.has(prefix + id) ? words.say(prefix + id) : id;
    }
}
