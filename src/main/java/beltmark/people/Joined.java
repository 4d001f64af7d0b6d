package beltmark.people;

import java.time.LocalDate;
import java.util.List;

/**
 * Body of the record {@code people.joined}: somebody was put on the site.
 *
 * @param name the name
 * @param crew the name of the crew
 * @param crewId its number
 * @param roles the words of the roles
 * @param on the first day in the crew
 */
public record Joined(String name, String crew, long crewId, List<String> roles, LocalDate on) {

    /** What the record is called. */
    public static final String KIND = "people.joined";

    public Joined {
        roles = List.copyOf(roles);
    }

    /** {@return the body for somebody who joins a crew} */
    public static Joined of(Newcomer newcomer, String crew, long crewId, LocalDate on) {
        List<String> roles =
                newcomer.roles().stream().sorted().map(role -> role.word()).toList();
        return new Joined(newcomer.name(), crew, crewId, roles, on);
    }
}
