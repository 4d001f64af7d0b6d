package beltmark;

import beltmark.people.DemoPeople;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long the pages about qualifications take on a large site: 1,000 people, and as many answers to practice as the first
 * argument says, 200 a year of each person. The real server on a real database, asked over HTTP by the coordinator; the
 * records are filled in by SQL without their chain.
 *
 * <p>{@code java -cp target/test-classes:target/classes:… beltmark.LargeSite 1000000}
 */
public final class LargeSite {

    private static final int WARM_UP = 30;
    private static final int ASKED = 200;
    private static final int ANSWERS_A_YEAR = 200_000;

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private final String site;

    private LargeSite(int port) {
        this.site = "http://127.0.0.1:" + port;
    }

    public static void main(String[] args) throws IOException, InterruptedException, CannotListen {
        int answers = Integer.parseInt(args[0]);
        Path folder = Files.createTempDirectory("beltmark-large");
        Config config = new Config("127.0.0.1", 0, folder, Config.Demo.PEOPLE, false);
        try (App app = App.start(config, Clock.system(ZoneId.systemDefault()))) {
            fill(app, answers);
            LargeSite site = new LargeSite(app.port());
            site.signIn(app);
            System.out.printf("%,d answers, %,d MB%n", answers, Files.size(folder.resolve("beltmark.db")) >> 20);
            site.measure(app);
        }
    }

    private void measure(App app) throws IOException, InterruptedException {
        LocalDate today = LocalDate.now(ZoneId.systemDefault());
        long person = number(app, "SELECT max(id) FROM people_person");
        for (String path : List.of(
                "/board",
                "/board?page=20",
                "/board?on=" + today.minusDays(100),
                "/board?on=" + today.plusDays(100),
                "/board?status=cleared",
                "/board?card=wide-belt-rig",
                "/board.csv",
                "/board/" + person + "/practice-bench",
                "/board/" + person + "/qualification-wide-belt-rig",
                "/job-check?card=wide-belt-rig&fitters=2&also-lockout=1",
                "/job-check?card=wide-belt-rig&fitters=2&also-lockout=1&on=" + today.plusDays(60),
                "/job-check?card=incline-rig&crew=" + number(app, "SELECT max(id) FROM people_crew"),
                "/expiry")) {
            measure(path);
        }
    }

    private void measure(String path) throws IOException, InterruptedException {
        int size = 0;
        for (int i = 0; i < WARM_UP; i++) {
            size = get(path).length();
        }
        double[] took = new double[ASKED];
        for (int i = 0; i < ASKED; i++) {
            long from = System.nanoTime();
            get(path);
            took[i] = (System.nanoTime() - from) / 1e6;
        }
        Arrays.sort(took);
        System.out.printf(
                Locale.ROOT,
                "median %7.1f ms   p99 %7.1f ms   least %7.1f ms   %,9d characters   %s%n",
                took[ASKED / 2],
                took[ASKED * 99 / 100],
                took[0],
                size,
                path);
    }

    private String get(String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(site + path)).build();
        HttpResponse<String> response = client.send(request, HttpResponse.BodyHandlers.ofString());
        if (response.statusCode() != 200) {
            throw new IllegalStateException(path + ": " + response.statusCode());
        }
        return response.body();
    }

    private void signIn(App app) throws IOException, InterruptedException {
        long person = number(app, "SELECT id FROM people_person WHERE name = 'Hanneke Visser'");
        long crew = number(app, "SELECT crew_id FROM people_person WHERE name = 'Hanneke Visser'");
        String path = "/sign-in/" + crew + "/" + person;
        Matcher csrf = Pattern.compile("name=\"csrf\" value=\"([^\"]+)\"").matcher(get(path));
        if (!csrf.find()) {
            throw new IllegalStateException("no form");
        }
        String form = "csrf=" + csrf.group(1) + "&pin=" + DemoPeople.read().pin();
        HttpRequest request = HttpRequest.newBuilder(URI.create(site + path))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form, StandardCharsets.UTF_8))
                .build();
        client.send(request, HttpResponse.BodyHandlers.ofString());
        get("/today");
    }

    private static long number(App app, String query) {
        return app.database()
                .read(handle -> handle.createQuery(query).mapTo(Long.class).one());
    }

    /** Fills in people and records; the triggers that guard the chain are taken off, since nothing here has one. */
    private static void fill(App app, int answers) throws IOException {
        String script;
        try (var file = LargeSite.class.getResourceAsStream("/beltmark/large-site.sql")) {
            byte[] bytes = file == null
                    ? Files.readAllBytes(Path.of("src/jmh/resources/beltmark/large-site.sql"))
                    : file.readAllBytes();
            script = new String(bytes, StandardCharsets.UTF_8);
        }
        long days = Math.max(1, 365L * answers / ANSWERS_A_YEAR);
        app.database()
                .write(handle -> {
                    for (String statement : script.split(";\\s*\n", -1)) {
                        if (!statement.isBlank()) {
                            handle.execute(statement
                                    .replace(":answers", Integer.toString(answers))
                                    .replace(":days", Long.toString(days)));
                        }
                    }
                    return true;
                })
                .join();
    }
}
