package beltmark.today;

import beltmark.web.Role;
import beltmark.web.Visitor;
import java.util.List;
import java.util.Set;

/**
 * One way on from the start page. A new one is a line here and two texts, {@code today.errand.<word>.title} and
 * {@code .sentence}.
 *
 * @param word its word in the texts
 * @param path where it leads
 * @param roles who sees it; the first that fits a person is that person's next action
 */
public record Errand(String word, String path, Set<Role> roles) {

    private static final Set<Role> EVERYBODY =
            Set.of(Role.NEW_HIRE, Role.SUPERVISOR, Role.COORDINATOR, Role.TRAINER, Role.ADMIN);

    private static final List<Errand> ALL = List.of(
            new Errand("bench", "/practice/bench", Set.of(Role.NEW_HIRE)),
            new Errand("lockout", "/lockout", Set.of(Role.NEW_HIRE)),
            new Errand("board", "/board", Set.of(Role.SUPERVISOR, Role.ADMIN)),
            new Errand("sign-off", "/sign-off", Set.of(Role.SUPERVISOR)),
            new Errand("review", "/review", Set.of(Role.COORDINATOR)),
            new Errand("desk", "/desk", Set.of(Role.COORDINATOR)),
            new Errand("assessors", "/sign-off/assessors", Set.of(Role.COORDINATOR)),
            new Errand("board-too", "/board", Set.of(Role.COORDINATOR)),
            new Errand("job-check", "/job-check", Set.of(Role.SUPERVISOR, Role.COORDINATOR)),
            new Errand("expiry", "/expiry", Set.of(Role.SUPERVISOR, Role.COORDINATOR)),
            new Errand("people", "/people", Set.of(Role.ADMIN, Role.SUPERVISOR)),
            new Errand("practice", "/practice", EVERYBODY),
            new Errand("packs", "/packs", Set.of(Role.TRAINER)),
            new Errand("preview", "/preview", Set.of(Role.TRAINER)),
            new Errand("own-record", "/board/me", Set.of(Role.NEW_HIRE)),
            new Errand("certificate", "/certificate", EVERYBODY),
            new Errand("sheet", "/sheet", EVERYBODY),
            new Errand("hardware", "/hardware", EVERYBODY),
            new Errand("glossary", "/glossary", EVERYBODY),
            new Errand(
                    "bench-try",
                    "/practice/bench",
                    Set.of(Role.SUPERVISOR, Role.COORDINATOR, Role.TRAINER, Role.ADMIN)));

    public Errand {
        roles = Set.copyOf(roles);
    }

    /** {@return the errands of a person, the next action first} */
    static List<Errand> listFor(Visitor visitor) {
        return ALL.stream()
                .filter(errand -> errand.roles.stream().anyMatch(visitor::has))
                .toList();
    }
}
