package beltmark.core.lockout;

import java.util.Map;
import java.util.Optional;

/**
 * The words of a question that is made from what the site has entered; the words around them are in the text files.
 *
 * @param form what is asked, the last part of the keys of its texts
 * @param machine the machine it is about
 * @param version the version it was made from
 * @param options the text of each option that was entered
 */
public record Told(String form, String machine, int version, Map<String, String> options) {

    public Told {
        options = Map.copyOf(options);
    }

    /** {@return the text of an option, if it was entered and is not in the text files} */
    public Optional<String> find(String option) {
        return Optional.ofNullable(options.get(option));
    }
}
