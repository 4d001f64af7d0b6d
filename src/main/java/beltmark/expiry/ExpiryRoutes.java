package beltmark.expiry;

import beltmark.core.units.Graduation;
import beltmark.qualification.StandingWords;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import beltmark.web.Csv;
import beltmark.web.Download;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The addresses of the list, of the same as a file, and of the calendars. */
public final class ExpiryRoutes {

    private static final String LIST = "/expiry";

    private final Expiry expiry;
    private final Texts texts;
    private final byte[] key;
    private final Views views;
    private final Html html;

    /**
     * @param expiry the feature
     * @param texts the languages of the calendars
     * @param key a secret of the site, for the names of the events
     * @param views what pages share
     * @param html how they are rendered
     */
    public ExpiryRoutes(Expiry expiry, Texts texts, byte[] key, Views views, Html html) {
        this.expiry = expiry;
        this.texts = texts;
        this.key = key;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. A calendar is open to whoever holds its address: calendar programs cannot sign in. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get(LIST, this::show, Role.SUPERVISOR, Role.COORDINATOR);
        routes.get("/expiry.csv", this::export, Role.SUPERVISOR, Role.COORDINATOR);
        routes.post("/expiry/calendars", this::make, Role.SUPERVISOR);
        routes.post("/expiry/calendars/{feed}/revoke", this::revoke, Role.SUPERVISOR);
        routes.get("/calendar/{token}.ics", this::calendar, Role.ANYONE);
    }

    private void show(Context ctx) {
        show(ctx, "");
    }

    private void show(Context ctx, String address) {
        Visitor visitor = views.visitor(ctx);
        Optional<Crew> crew = crew(ctx);
        html.show(
                ctx,
                new ExpiryPage(
                        views.of(ctx),
                        expiry.listCrews(visitor),
                        crew,
                        expiry.today(),
                        expiry.listNext(crew),
                        visitor.has(Role.SUPERVISOR) ? expiry.listFeeds(visitor) : List.of(),
                        address,
                        OperationId.fresh()));
    }

    private Optional<Crew> crew(Context ctx) {
        return expiry.findCrew(views.visitor(ctx), Form.ofAddress(ctx).text("crew"));
    }

    private void export(Context ctx) {
        Words words = views.of(ctx).words();
        StandingWords says = new StandingWords(words);
        List<String> columns = Stream.of("last-day", "person", "crew", "qualification", "next")
                .map(column -> words.say("expiry.csv." + column))
                .toList();
        List<List<String>> rows = expiry.listNext(crew(ctx)).stream()
                .map(ending -> List.of(
                        ending.lastDay().toString(),
                        ending.member().name(),
                        ending.member().crew(),
                        says.name(ending.qualification()),
                        says.next(ending.standing())))
                .toList();
        Download.csv(ctx, "next-" + Expiry.DAYS + "-days", Csv.of(columns, rows));
    }

    private void make(Context ctx) {
        OperationId operation = Form.of(ctx).operation();
        ctx.future(() -> expiry.makeFeed(views.visitor(ctx), operation).thenAccept(token -> {
            if (token.isPresent()) {
                // the only time that the token is shown: the database has its hash alone
                show(ctx, ctx.scheme() + "://" + ctx.host() + "/calendar/" + token.get() + ".ics");
            } else {
                ctx.redirect(LIST, HttpStatus.SEE_OTHER);
            }
        }));
    }

    private void revoke(Context ctx) {
        long feed = Form.pathNumber(ctx, "feed");
        OperationId operation = Form.of(ctx).operation();
        ctx.future(() -> expiry.revokeFeed(views.visitor(ctx), feed, operation)
                .thenAccept(revoked -> ctx.redirect(LIST, HttpStatus.SEE_OTHER)));
    }

    private void calendar(Context ctx) {
        Feed feed = expiry.findFeed(ctx.pathParam("token")).orElseThrow(() -> new NotFound("no calendar"));
        Words words = texts.words(language(feed), Graduation.MILLIMETRE);
        ctx.contentType("text/calendar; charset=utf-8")
                .result(new CrewCalendar(words, key).write(expiry.listEndings(feed), expiry.now()));
    }

    private Language language(Feed feed) {
        return texts.languages().stream()
                .filter(language -> language.tag().equals(feed.language()))
                .findFirst()
                .orElse(Language.EN);
    }
}
