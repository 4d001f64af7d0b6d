package beltmark.web;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import java.util.Set;

/**
 * The signed-in person of a request.
 *
 * @param personId the person, above 0
 * @param name as it is shown
 * @param crewId the crew the person belongs to
 * @param roles the job roles the person has
 * @param language the language of the pages
 * @param graduation how finely, and in which unit, the person reads lengths
 */
public record Visitor(
        long personId, String name, long crewId, Set<Role> roles, Language language, Graduation graduation) {

    public Visitor {
        roles = Set.copyOf(roles);
    }

    /** {@return whether the person has that job role} */
    public boolean has(Role role) {
        return roles.contains(role);
    }
}
