package beltmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import beltmark.Browser.Reply;
import io.javalin.router.ParsedEndpoint;
import io.javalin.security.Roles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Walks every route that the server has as every role, against {@code access.csv}: a new route is a new line there. Where
 * a line says yes, the handler is reached: it may well answer that there is no such thing, or that the form is empty.
 */
class AccessTest {

    private static final Path MATRIX = Path.of("src/test/resources/access.csv");
    /** Stands for every path parameter, and exists nowhere. */
    private static final String NOBODY = "999999";

    private static final Map<String, String> PEOPLE = Map.of(
            "new-hire", SampleSite.NEW_HIRE,
            "supervisor", SampleSite.SUPERVISOR,
            "coordinator", SampleSite.COORDINATOR,
            "trainer", SampleSite.TRAINER,
            "admin", SampleSite.ADMIN);

    @SuppressWarnings("NullAway.Init")
    private static SampleSite site;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void everyRouteHasALineAndEveryLineARoute() throws IOException {
        Set<String> routes = endpoints()
                .map(route -> route.endpoint.method + " " + route.endpoint.path)
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> lines = rows().stream()
                .map(row -> row.get(0) + " " + row.get(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(lines, routes, "add the missing lines to " + MATRIX + ", or take them out");
    }

    @Test
    void everyRouteSaysWhoMayUseIt() {
        List<String> silent = endpoints()
                .filter(route -> {
                    Roles roles = route.endpoint.metadata(Roles.class);
                    return roles == null || roles.getRoles().isEmpty();
                })
                .map(route -> route.endpoint.path)
                .toList();
        assertEquals(List.of(), silent);
    }

    @TestFactory
    Stream<DynamicTest> everyRoleIsAnsweredAsTheTableSays() throws IOException {
        List<List<String>> rows = rows();
        List<String> roles = header().subList(2, header().size());
        List<DynamicTest> tests = new ArrayList<>();
        for (String role : roles) {
            tests.add(DynamicTest.dynamicTest(role, () -> walk(rows, role, roles.indexOf(role) + 2)));
        }
        return tests.stream();
    }

    private static void walk(List<List<String>> rows, String role, int column) {
        Browser browser = open(role);
        String csrf = csrf(browser);
        for (List<String> row : rows) {
            String path = row.get(1).replaceAll("\\{[^}]*}", NOBODY);
            Reply reply = browser.ask(row.get(0), path, List.of(Map.entry("csrf", csrf)));
            String what = row.get(0) + " " + row.get(1) + " as " + role + ": " + reply.status();
            assertEquals(row.get(column), answer(row.get(0), reply), what);
            assertFalse(reply.status() >= 500, what);
            if (path.equals("/sign-out")) {
                browser = open(role);
                csrf = csrf(browser);
            }
        }
    }

    private static Browser open(String role) {
        String name = PEOPLE.get(role);
        return name == null ? site.browser() : site.signIn(name);
    }

    private static String csrf(Browser browser) {
        return browser.get("/sign-in/1/1").page().select("[name=csrf]").attr("value");
    }

    private static String answer(String method, Reply reply) {
        if (method.equals("GET")) {
            boolean sent = reply.isRedirect() && reply.header("Location").startsWith("/sign-in?next=");
            return sent ? "sign-in" : reply.status() == 403 ? "no" : "yes";
        }
        return reply.status() == 401 ? "sign-in" : reply.status() == 403 ? "no" : "yes";
    }

    private static Stream<ParsedEndpoint> endpoints() {
        return site.server().unsafe.internalRouter.allHttpHandlers().stream()
                .filter(route -> route.endpoint.method.isHttpMethod());
    }

    private static List<String> header() throws IOException {
        return lines().get(0);
    }

    private static List<List<String>> rows() throws IOException {
        List<List<String>> lines = lines();
        return lines.subList(1, lines.size());
    }

    private static List<List<String>> lines() throws IOException {
        return Files.readAllLines(MATRIX).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> Arrays.asList(line.split(",", -1)))
                .toList();
    }
}
