package beltmark.people;

import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.web.Role;
import beltmark.web.Visitor;
import java.util.EnumSet;
import java.util.Set;

/**
 * Somebody who may sign in, or once might.
 *
 * @param id above 0
 * @param name as it is shown
 * @param crewId the crew the person belongs to
 * @param roles the job roles
 * @param language the language of the pages
 * @param graduation how lengths are shown
 * @param active false when the person may no longer sign in
 */
public record Person(
        long id, String name, long crewId, Set<Role> roles, Language language, Graduation graduation, boolean active) {

    public Person {
        roles = Set.copyOf(roles);
    }

    /** {@return the roles in the order they are declared} */
    public Set<Role> orderedRoles() {
        return roles.isEmpty() ? Set.of() : EnumSet.copyOf(roles);
    }

    Visitor toVisitor() {
        return new Visitor(id, name, crewId, roles, language, graduation);
    }
}
