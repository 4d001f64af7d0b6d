package beltmark;

import beltmark.db.Database;
import beltmark.people.DemoPeople;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.texts.Texts;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jsoup.Jsoup;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The lockout review over HTTP on a site of 2,000 people in 40 crews with so many quiz results of five years. Results and
 * totals are written as the quiz writes them; single answers, which the page never reads, are left out.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(1)
public class ReviewBenchmark {

    private static final int CREWS = 40;
    private static final int PEOPLE = 2_000;
    private static final int ASKED = 16;
    private static final int NEEDED = 13;
    private static final int BATCH = 1_000;
    private static final int DAYS = 5 * 365;
    private static final Instant START = Instant.parse("2021-11-01T08:00:00Z");
    private static final String COORDINATOR = "Hanneke Visser";

    @Param("100000")
    public int results;

    private final HttpClient client = HttpClient.newHttpClient();
    private final Random random = new Random(6);
    private final List<String> questions = Texts.load(ZoneOffset.UTC).keys().stream()
            .filter(key -> key.matches("lockout\\.question\\.[a-z0-9-]+\\.name"))
            .map(key -> key.split("\\.")[2])
            .sorted()
            .collect(Collectors.toCollection(ArrayList::new));

    private Path folder = Path.of("");
    private App app;
    private String cookie = "";

    @Setup
    public void start() throws Exception {
        folder = Files.createTempDirectory("beltmark-bench");
        app = App.start(new Config("127.0.0.1", 0, folder, Config.Demo.PEOPLE, false), Clock.systemUTC());
        Database database = app.database();
        List<Long> people = database.write(this::addPeople).join();
        RecordBook book = new RecordBook(Clock.systemUTC());
        for (int done = 0; done < results; done += BATCH) {
            int from = done;
            database.write(handle -> {
                        for (int i = from; i < Math.min(results, from + BATCH); i++) {
                            addResult(handle, book, people, i);
                        }
                        return true;
                    })
                    .join();
        }
        signIn();
    }

    private List<Long> addPeople(Handle handle) {
        List<Long> ids = new ArrayList<>();
        for (int i = 0; i < PEOPLE; i++) {
            long crew = 1_000 + i % CREWS;
            if (i < CREWS) {
                handle.execute("INSERT INTO people_crew VALUES (?, ?, 1)", crew, "Bench crew " + crew);
            }
            handle.execute(
                    "INSERT INTO people_person VALUES (?, ?, ?, 'NEW_HIRE', 'en', 'MILLIMETRE', 1)",
                    10_000 + i,
                    "Person " + i,
                    crew);
            ids.add(10_000L + i);
        }
        return ids;
    }

    /** The body of a record; what is in it does not matter here. */
    public record Body(int number) {}

    private void addResult(Handle handle, RecordBook book, List<Long> people, int number) {
        long person = people.get(number % PEOPLE);
        long crew = 1_000 + (person - 10_000) % CREWS;
        Instant at = START.plus((long) number * DAYS / results, ChronoUnit.DAYS);
        long sitting = append(handle, book, "lockout.sitting", person, number, at);
        handle.execute(
                "INSERT INTO lockout_sitting VALUES (?, ?, 'lockout', 2, ?, ?)",
                sitting,
                person,
                number,
                at.toEpochMilli());
        List<String> asked = asked();
        List<String> right =
                asked.stream().filter(question -> random.nextInt(100) < 80).toList();
        boolean passed = right.size() >= NEEDED;
        long result = append(handle, book, "lockout.result", person, number, at);
        handle.execute(
                "INSERT INTO lockout_result VALUES (?, ?, ?, ?, 'lockout', 2, ?, ?, ?, ?, ?, ?)",
                result,
                sitting,
                person,
                crew,
                right.size(),
                ASKED,
                NEEDED,
                "",
                passed,
                at.toEpochMilli());
        handle.execute("""
                INSERT INTO lockout_standing VALUES (?, 'lockout', NULL, ?, ?) ON CONFLICT DO UPDATE
                SET last_result = excluded.last_result, passed_result = coalesce(excluded.passed_result, passed_result)""", person, result, passed ? result : null);
        if (!right.contains(asked.get(0))) {
            handle.execute("""
                    INSERT INTO lockout_critical VALUES (?, 'lockout', ?, 1, ?)
                    ON CONFLICT DO UPDATE SET times = times + 1, last_result = excluded.last_result""", person, asked.get(0), result);
        }
        // everybody's first sitting, spread over the five years
        if (number / PEOPLE == person % (results / PEOPLE)) {
            count(handle, crew, at.toString().substring(0, 7), asked, right, passed);
        }
    }

    private List<String> asked() {
        Collections.shuffle(questions, random);
        return List.copyOf(questions.subList(0, Math.min(ASKED, questions.size())));
    }

    private static long append(Handle handle, RecordBook book, String kind, long person, int number, Instant at) {
        return book.append(handle, new Entry(kind, kind + "/" + number, person, person, at, new Body(number)))
                .sequence();
    }

    private void count(Handle handle, long crew, String month, List<String> asked, List<String> right, boolean passed) {
        for (long scope : new long[] {0, crew}) {
            handle.execute("""
                    INSERT INTO lockout_first_score VALUES ('lockout', ?, ?, ?, ?, 1, ?)
                    ON CONFLICT DO UPDATE SET people = people + 1, passed = passed + excluded.passed""", scope, month, ASKED, right.size(), passed);
            for (String question : asked) {
                boolean hit = right.contains(question);
                handle.execute("""
                        INSERT INTO lockout_first_question VALUES ('lockout', ?, ?, ?, ?, ?, 1, ?)
                        ON CONFLICT DO UPDATE SET people = people + 1, hits = hits + excluded.hits""", scope, month, question, ASKED, right.size(), hit);
                if (!hit) {
                    handle.execute("""
                            INSERT INTO lockout_first_miss VALUES ('lockout', ?, ?, ?, 'chosen', ?, 1)
                            ON CONFLICT DO UPDATE SET people = people + 1""", scope, month, question, "abcd".charAt(random.nextInt(4)) + "");
                }
            }
        }
    }

    private void signIn() throws IOException, InterruptedException {
        long[] ids = app.database()
                .read(handle -> handle.createQuery("SELECT crew_id, id FROM people_person WHERE name = :name")
                        .bind("name", COORDINATOR)
                        .map((row, context) -> new long[] {row.getLong(1), row.getLong(2)})
                        .one());
        String path = "/sign-in/" + ids[0] + "/" + ids[1];
        HttpResponse<String> form = send(request(path).GET().build());
        keepCookie(form);
        String fields = Jsoup.parse(form.body()).select("main form input[type=hidden]").stream()
                .map(input -> input.attr("name") + "=" + input.attr("value"))
                .collect(Collectors.joining("&"));
        HttpResponse<String> in = send(request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(
                        fields + "&pin=" + DemoPeople.read().pin()))
                .build());
        keepCookie(in);
        if (send(request("/review").GET().build()).statusCode() != 200) {
            throw new IllegalStateException("not signed in: " + in.statusCode());
        }
    }

    private void keepCookie(HttpResponse<String> response) {
        response.headers().allValues("Set-Cookie").forEach(set -> {
            String pair = set.split(";", 2)[0];
            cookie = set.contains("Max-Age=0") ? cookie : cookie.isEmpty() ? pair : cookie + "; " + pair;
        });
    }

    private HttpRequest.Builder request(String path) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + app.port() + path));
        return cookie.isEmpty() ? request : request.header("Cookie", cookie);
    }

    private HttpResponse<String> send(HttpRequest request) throws IOException, InterruptedException {
        return client.send(request, BodyHandlers.ofString());
    }

    @Benchmark
    public int allCrews() throws IOException, InterruptedException {
        return page("/review");
    }

    @Benchmark
    public int oneCrewOneYear() throws IOException, InterruptedException {
        return page("/review?crew=1007&from=2025-01&to=2025-12");
    }

    private int page(String path) throws IOException, InterruptedException {
        HttpResponse<String> page = send(request(path).GET().build());
        if (page.statusCode() != 200) {
            throw new IllegalStateException(path + " answers " + page.statusCode());
        }
        return page.body().length();
    }

    @TearDown
    public void stop() throws IOException {
        app.close();
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(Collections.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
