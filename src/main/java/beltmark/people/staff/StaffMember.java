package beltmark.people.staff;

import beltmark.people.Crew;
import beltmark.people.Membership;
import beltmark.web.Role;
import java.util.List;
import java.util.Set;

/**
 * Somebody with all that an admin may change.
 *
 * @param id above 0
 * @param name as it is shown
 * @param crew the crew, or the last one
 * @param roles the job roles
 * @param here false after leaving
 * @param memberships all crews, the first one first
 */
public record StaffMember(
        long id, String name, Crew crew, Set<Role> roles, boolean here, List<Membership> memberships) {

    public StaffMember {
        roles = Set.copyOf(roles);
        memberships = List.copyOf(memberships);
    }

    /** {@return the same person with these crews} */
    StaffMember with(List<Membership> all) {
        return new StaffMember(id, name, crew, roles, here, all);
    }
}
