package beltmark.people.staff;

import beltmark.web.Role;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** Bodies of the records on people; who and by whom is in the record itself. */
final class StaffRecords {

    static final String MOVED = "people.moved";
    static final String ROLES = "people.roles-changed";
    static final String LEFT = "people.left";
    static final String RETURNED = "people.returned";

    private StaffRecords() {}

    /**
     * Somebody is in another crew.
     *
     * @param from the name of the crew before
     * @param to the name of the crew from then on
     * @param toCrew its number
     * @param on the first day in it
     */
    record Moved(String from, String to, long toCrew, LocalDate on) {}

    /**
     * Somebody has other roles, from the moment of the record on.
     *
     * @param before the words of the roles before
     * @param after the words of the roles from now on
     */
    record RolesChanged(List<String> before, List<String> after) {

        static RolesChanged of(Set<Role> before, Set<Role> after) {
            return new RolesChanged(words(before), words(after));
        }

        private static List<String> words(Set<Role> roles) {
            return roles.stream().sorted().map(Role::word).toList();
        }
    }

    /**
     * Somebody left.
     *
     * @param crew the name of the last crew
     * @param on the first day no longer here
     */
    record Left(String crew, LocalDate on) {}

    /**
     * Somebody came back.
     *
     * @param crew the name of the crew
     * @param crewId its number
     * @param on the first day here again
     */
    record Returned(String crew, long crewId, LocalDate on) {}
}
