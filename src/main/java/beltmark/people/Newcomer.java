package beltmark.people;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.web.Role;
import java.util.Set;

/**
 * Somebody who is to be on the site.
 *
 * @param name as it is shown
 * @param roles the job roles, at least one
 * @param language the language of the pages
 * @param graduation how lengths are shown
 */
public record Newcomer(String name, Set<Role> roles, Language language, Graduation graduation) {

    public Newcomer {
        roles = Set.copyOf(roles);
    }
}
