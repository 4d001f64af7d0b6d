package beltmark.core.lockout;

import java.util.Set;

/**
 * What the site's coordinator has set for single questions, by id.
 *
 * @param confirmed questions whose weak source was confirmed
 * @param retired questions that are asked no more
 */
public record Switches(Set<String> confirmed, Set<String> retired) {

    /** Nothing confirmed, nothing retired. */
    public static final Switches NONE = new Switches(Set.of(), Set.of());

    public Switches {
        confirmed = Set.copyOf(confirmed);
        retired = Set.copyOf(retired);
    }
}
