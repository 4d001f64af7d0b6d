package beltmark;

import beltmark.bank.BankRoutes;
import beltmark.bank.QuestionControl;
import beltmark.board.Board;
import beltmark.board.BoardRoutes;
import beltmark.certificate.CertificateRoutes;
import beltmark.certificate.Certificates;
import beltmark.certificate.SigningKey;
import beltmark.certificate.VerifyRoutes;
import beltmark.content.Content;
import beltmark.content.QuizContent;
import beltmark.core.lockout.Papers;
import beltmark.core.units.Graduation;
import beltmark.db.Database;
import beltmark.demo.DemoAssessors;
import beltmark.demo.DemoClock;
import beltmark.demo.DemoDemonstrations;
import beltmark.demo.DemoEvents;
import beltmark.demo.DemoPractice;
import beltmark.demo.DemoQuiz;
import beltmark.demo.DemoYear;
import beltmark.demo.DemoYearPlayer;
import beltmark.desk.DeskRoutes;
import beltmark.desk.Inspections;
import beltmark.desk.Orders;
import beltmark.expiry.Expiry;
import beltmark.expiry.ExpiryRoutes;
import beltmark.glossary.GlossaryRoutes;
import beltmark.hardware.HardwareRoutes;
import beltmark.jobcheck.JobCheck;
import beltmark.jobcheck.JobCheckRoutes;
import beltmark.keys.KeyFolder;
import beltmark.lockout.Lockout;
import beltmark.lockout.LockoutRoutes;
import beltmark.lockout.Seeds;
import beltmark.outbox.OutboxRoutes;
import beltmark.ownrecord.OwnRecord;
import beltmark.ownrecord.OwnRecordRoutes;
import beltmark.people.DemoPeople;
import beltmark.people.Joining;
import beltmark.people.LanguageRoutes;
import beltmark.people.People;
import beltmark.people.PeopleRoutes;
import beltmark.people.PersonSessions;
import beltmark.people.Pins;
import beltmark.people.SettingsRoutes;
import beltmark.people.SignIn;
import beltmark.people.SignInRoutes;
import beltmark.people.first.FirstAdmin;
import beltmark.people.first.FirstRoutes;
import beltmark.people.first.SetupCode;
import beltmark.people.intake.Intake;
import beltmark.people.intake.IntakeRoutes;
import beltmark.people.staff.Staff;
import beltmark.people.staff.StaffRoutes;
import beltmark.practice.Practice;
import beltmark.practice.PracticeRoutes;
import beltmark.practice.pack.PackRoutes;
import beltmark.practice.pack.Packs;
import beltmark.preview.PreviewRoutes;
import beltmark.print.Pdf;
import beltmark.procedure.ProcedureRoutes;
import beltmark.procedure.Procedures;
import beltmark.recordbook.RecordBook;
import beltmark.review.Review;
import beltmark.review.ReviewRoutes;
import beltmark.sheet.SheetRoutes;
import beltmark.sheet.Sheets;
import beltmark.signoff.AssessorRoutes;
import beltmark.signoff.PhotoRoutes;
import beltmark.signoff.Photos;
import beltmark.signoff.Signoff;
import beltmark.signoff.SignoffRoutes;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import beltmark.today.Today;
import beltmark.today.TodayRoutes;
import beltmark.web.AddressLimit;
import beltmark.web.Assets;
import beltmark.web.ClientAddress;
import beltmark.web.Cookies;
import beltmark.web.Html;
import beltmark.web.Views;
import beltmark.web.WebServer;
import io.javalin.Javalin;
import io.javalin.util.JavalinBindException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The wiring of the server: all parts by name, in the order they need each other. */
public final class App implements AutoCloseable {

    /** Wrong PINs from one address in a minute: a shared tablet cannot lock a whole crew. */
    private static final int MOST_WRONG_PINS = 10;

    /** Certificates looked up from one address in a minute. */
    private static final int MOST_LOOK_UPS = 30;

    /** The quiz that qualifications ask for. */
    private static final String QUIZ = "lockout";

    private final Database database;
    private final Pins pins;
    private final FirstAdmin first;
    private final People people;
    private final Javalin server;

    private App(Config config, Clock clock, UnaryOperator<Papers> chosen) {
        Texts texts = Texts.load(clock.getZone());
        Content content = Content.read();
        Papers papers = chosen.apply(QuizContent.papers(texts.keys()));
        database = Database.open(config.data());
        KeyFolder keys = KeyFolder.in(config.data());
        RecordBook book = new RecordBook(clock);

        PersonSessions sessions = new PersonSessions(database, clock);
        pins = new Pins(database, keys.key("pepper"));
        SignIn signIn = new SignIn(database, pins, sessions);
        people = new People(database, book, clock, pins, sessions);
        boolean filled = config.demo() != Config.Demo.NONE && DemoPeople.read().addTo(database, pins);
        Signoff signoff = new Signoff(database, book, content, pins, clock);
        if (filled && config.demo() == Config.Demo.PAST_YEAR) {
            playDemoYear(clock, content, papers.withFixed(QUIZ), keys, texts);
        } else if (filled) {
            new DemoAssessors(people, signoff, content.cards()).play();
        }
        boolean demo = people.isDemo();
        Joining joining = new Joining(pins);
        first = new FirstAdmin(database, book, clock, joining, sessions);
        Staff staff = new Staff(database, book, clock, joining, sessions);

        Practice practice = new Practice(database, book, content, clock);

        Sheets sheets = new Sheets(database, book, clock);
        Assets assets = Assets.load();
        Html html = new Html();
        Cookies cookies = new Cookies(config.tls());
        ClientAddress address = new ClientAddress(config.tls());
        AddressLimit lookUpLimit = new AddressLimit(clock, MOST_LOOK_UPS, Duration.ofMinutes(1));
        Pdf pdf = new Pdf(html);
        Certificates certificates =
                new Certificates(database, book, content, clock, new SigningKey(keys.key("certificate")));
        AddressLimit signInLimit = new AddressLimit(clock, MOST_WRONG_PINS, Duration.ofMinutes(1));
        Views views = new Views(texts, sessions, cookies, keys.key("forms"), assets, () -> demo);

        Lockout lockout = new Lockout(database, book, papers, clock, Seeds.keyed(keys.key("sittings")));
        Review review = new Review(database, book, papers.all(), clock);

        server = new WebServer(views, html, assets, config.tls()).create(routes -> {
            new TodayRoutes(new Today(database, content, clock), views, html).register(routes);
            new SignInRoutes(signIn, signInLimit, address, cookies, views, html).register(routes);
            new LanguageRoutes(texts.languages(), cookies).register(routes);
            new SettingsRoutes(people, signIn, texts.languages(), cookies, views, html).register(routes);
            // before the routes with a name in their place
            new VerifyRoutes(certificates, lookUpLimit, address, views, html).register(routes);
            new CertificateRoutes(certificates, pdf, config.tls(), views, html).register(routes);
            new FirstRoutes(first, signInLimit, address, cookies, views, html).register(routes);
            new OwnRecordRoutes(new OwnRecord(database, clock), views).register(routes);
            new PeopleRoutes(people, views, html).register(routes);
            new IntakeRoutes(new Intake(database, book, clock, joining), texts.languages(), views, html)
                    .register(routes);
            new StaffRoutes(staff, views, html).register(routes);
            new PracticeRoutes(practice, views, html, new SecureRandom()).register(routes);
            new GlossaryRoutes(views, html).register(routes);
            new PackRoutes(
                            new Packs(database, book, content, practice, clock, new SecureRandom()),
                            texts,
                            views,
                            html,
                            pdf)
                    .register(routes);
            new PreviewRoutes(content, texts, views, html, new SecureRandom()).register(routes);
            new HardwareRoutes(content, views, html).register(routes);
            new SheetRoutes(sheets, content, views, html).register(routes);
            new BankRoutes(new QuestionControl(database, book, papers, clock), texts, views, html).register(routes);
            new ProcedureRoutes(new Procedures(database, book, clock), views, html).register(routes);
            new DeskRoutes(new Orders(database, book, clock), new Inspections(database, book, clock), views, html)
                    .register(routes);
            new LockoutRoutes(lockout, views, html).register(routes);
            new ReviewRoutes(review, views, html).register(routes);
            new BoardRoutes(new Board(database, content, clock), views, html).register(routes);
            new JobCheckRoutes(new JobCheck(database, content, clock), views, html).register(routes);
            new ExpiryRoutes(new Expiry(database, book, content, clock), texts, keys.key("calendar"), views, html)
                    .register(routes);
            new OutboxRoutes(assets, views, html).register(routes);
            Photos photos = new Photos(database, book, clock, config.data().resolve("photos"));
            new PhotoRoutes(signoff, photos, views, html).register(routes);
            new AssessorRoutes(signoff, views, html).register(routes);
            new SignoffRoutes(signoff, views, html).register(routes);
        });
    }

    /** The features once more, with a clock that stands in the past; then everybody sat the first, fixed quiz. */
    private void playDemoYear(Clock real, Content content, Papers papers, KeyFolder keys, Texts texts) {
        DemoClock clock = new DemoClock(real);
        RecordBook book = new RecordBook(clock);
        Words words = texts.words(Language.EN, Graduation.SIXTEENTH_INCH);
        Signoff signoff = new Signoff(database, book, content, pins, clock);
        new DemoYearPlayer(
                        clock,
                        new DemoPractice(people, new Practice(database, book, content, clock)),
                        new DemoQuiz(
                                people,
                                new Lockout(database, book, papers, clock, Seeds.keyed(keys.key("sittings"))),
                                words),
                        new DemoAssessors(people, signoff, content.cards()),
                        new DemoDemonstrations(
                                people, signoff, words, DemoPeople.read().pin()),
                        new DemoEvents(database, people, clock))
                .play(DemoYear.read());
    }

    /** {@return a running server} */
    static App start(Config config, Clock clock) throws CannotListen {
        return start(config, clock, UnaryOperator.identity());
    }

    /** {@return a running server whose quizzes are changed first, for tests that must know what is asked} */
    static App start(Config config, Clock clock, UnaryOperator<Papers> chosen) throws CannotListen {
        App app = new App(config, clock, chosen);
        try {
            app.server.start(config.host(), config.port());
            return app;
        } catch (JavalinBindException e) {
            app.close();
            throw new CannotListen("serve.port-taken");
        } catch (RuntimeException e) {
            app.close();
            throw e;
        }
    }

    /** {@return the port that is listened on} */
    public int port() {
        return server.port();
    }

    /** {@return the code for the first admin, empty when somebody is on the site} */
    public Optional<SetupCode> findSetupCode() {
        return first.findCode();
    }

    /** {@return whether the site holds invented people} */
    public boolean isDemo() {
        return people.isDemo();
    }

    /** {@return the server inside, for tests that walk its routes} */
    Javalin server() {
        return server;
    }

    /** {@return the database, for tests that look at what was stored} */
    Database database() {
        return database;
    }

    /** Stops taking requests, stores what waits, and closes everything. */
    @Override
    public void close() {
        server.stop();
        pins.close();
        database.close();
    }
}
