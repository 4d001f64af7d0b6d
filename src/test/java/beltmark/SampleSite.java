package beltmark;

import beltmark.core.lockout.Papers;
import beltmark.db.Database;
import beltmark.people.DemoPeople;
import beltmark.people.first.SetupCode;
import io.javalin.Javalin;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The real server on a free port, with the demo people in a folder of its own and a clock that tests move. Start one per
 * test class, and let each test have its own {@link Browser}.
 */
public final class SampleSite implements AutoCloseable {

    /** A new hire of the pier crew, reads 1/16 in. */
    public static final String NEW_HIRE = "Mateo Quispe";
    /** Another new hire of the pier crew, reads millimetres. */
    public static final String OTHER_NEW_HIRE = "Aroha Tamatea";
    /** The supervisor of the pier crew. */
    public static final String SUPERVISOR = "Ingrid Solheim";
    /** The supervisor of the silo crew. */
    public static final String OTHER_SUPERVISOR = "Samuel Adeyemi";
    /** The coordinator, of the site office. */
    public static final String COORDINATOR = "Hanneke Visser";
    /** The trainer, of the site office. */
    public static final String TRAINER = "Rafael Mourato";
    /** The admin, of the site office. */
    public static final String ADMIN = "Siobhan Keady";

    private final Path folder;
    private final MovingClock clock = new MovingClock();
    private final App app;

    private SampleSite(Path folder, Config.Demo demo, boolean tls) {
        this(folder, demo, tls, papers -> papers.withFixed("lockout"));
    }

    private SampleSite(Path folder, Config.Demo demo, boolean tls, UnaryOperator<Papers> papers) {
        this.folder = folder;
        try {
            this.app = App.start(new Config("127.0.0.1", 0, folder, demo, tls), clock, papers);
        } catch (CannotListen e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return a running site; its lockout quiz asks the same questions of everybody, so that tests know them} */
    public static SampleSite start() {
        return new SampleSite(newFolder(), Config.Demo.PEOPLE, false);
    }

    /** {@return a site without anybody} */
    public static SampleSite startEmpty() {
        return new SampleSite(newFolder(), Config.Demo.NONE, false);
    }

    /** {@return the code that the server would print for the first admin, empty when there is none} */
    public String setupCode() {
        return app.findSetupCode().map(SetupCode::printed).orElse("");
    }

    /** {@return a running site with the papers as they are shipped, drawn from the bank} */
    public static SampleSite startWithBank() {
        return new SampleSite(newFolder(), Config.Demo.PEOPLE, false, UnaryOperator.identity());
    }

    /** {@return a site that believes to be reached through TLS} */
    public static SampleSite startBehindTls() {
        return new SampleSite(newFolder(), Config.Demo.PEOPLE, true);
    }

    /** {@return a site with the past year of the demo} */
    public static SampleSite startWithPastYear() {
        return new SampleSite(newFolder(), Config.Demo.PAST_YEAR, false);
    }

    private static Path newFolder() {
        try {
            return Files.createTempDirectory("beltmark");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return the clock of the server} */
    public MovingClock clock() {
        return clock;
    }

    /** {@return the database of the server, to look at what was stored} */
    public Database database() {
        return app.database();
    }

    /** {@return the port the server listens on} */
    public int port() {
        return app.port();
    }

    /** {@return the server inside, with its routes} */
    public Javalin server() {
        return app.server();
    }

    /** {@return the data folder} */
    public Path folder() {
        return folder;
    }

    /** {@return the PIN of every demo person} */
    public static String pin() {
        return DemoPeople.read().pin();
    }

    /** {@return the number of a demo person} */
    public long personId(String name) {
        return database()
                .read(handle -> handle.createQuery("SELECT id FROM people_person WHERE name = :name")
                        .bind("name", name)
                        .mapTo(Long.class)
                        .one());
    }

    /** {@return the number of a demo person's crew} */
    public long crewId(String name) {
        return database()
                .read(handle -> handle.createQuery("SELECT crew_id FROM people_person WHERE name = :name")
                        .bind("name", name)
                        .mapTo(Long.class)
                        .one());
    }

    /** {@return a browser without any cookie} */
    public Browser browser() {
        return new Browser("http://127.0.0.1:" + port());
    }

    /** {@return a browser in which that person has signed in, by crew, name and PIN} */
    public Browser signIn(String name) {
        Browser browser = browser();
        Browser.Reply reply = signIn(browser, name, pin());
        if (reply.status() != 200 || !reply.path().equals("/today")) {
            throw new IllegalStateException(name + " could not sign in: " + reply.status() + " " + reply.text());
        }
        return browser;
    }

    /** {@return what comes of an attempt to sign in} */
    public Browser.Reply signIn(Browser browser, String name, String pin) {
        Browser.Reply form = browser.get("/sign-in/" + crewId(name) + "/" + personId(name));
        return form.send("pin", pin);
    }

    @Override
    public void close() {
        app.close();
        try (Stream<Path> files = Files.walk(folder)) {
            List<Path> deepestFirst = files.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepestFirst) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
