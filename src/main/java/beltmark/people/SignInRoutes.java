package beltmark.people;

import beltmark.people.PinRules.PinFault;
import beltmark.web.AddressLimit;
import beltmark.web.ClientAddress;
import beltmark.web.Cookies;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

/** Sign-in in three steps, crew, name and PIN, and sign-out. */
public final class SignInRoutes {

    private static final int UNPROCESSABLE = 422;

    private final SignIn signIn;
    private final AddressLimit limit;
    private final ClientAddress address;
    private final Cookies cookies;
    private final Views views;
    private final Html html;

    /**
     * @param signIn compares PINs and starts sessions
     * @param limit how many wrong PINs one address may try
     * @param address whom requests come from
     * @param cookies where the session token goes
     * @param views what pages share
     * @param html how they are rendered
     */
    @SuppressWarnings("TooManyParameters") // wiring
    public SignInRoutes(
            SignIn signIn, AddressLimit limit, ClientAddress address, Cookies cookies, Views views, Html html) {
        this.signIn = signIn;
        this.limit = limit;
        this.address = address;
        this.cookies = cookies;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/sign-in", this::showCrews, Role.ANYONE);
        routes.get("/sign-in/{crew}", this::showNames, Role.ANYONE);
        routes.get("/sign-in/{crew}/{person}", this::showPin, Role.ANYONE);
        routes.post("/sign-in/{crew}/{person}", this::tryPin, Role.ANYONE);
        routes.post("/sign-in/{crew}/{person}/new-pin", this::choosePin, Role.ANYONE);
        routes.post("/sign-out", this::signOut, Role.ANYONE);
    }

    private void showCrews(Context ctx) {
        View view = views.of(ctx);
        if (view.visitor() != null) {
            ctx.redirect(NextPath.of(ctx.queryParam("next")).value(), HttpStatus.SEE_OTHER);
            return;
        }
        html.show(ctx, new CrewsPage(view, signIn.listCrews(), NextPath.of(ctx.queryParam("next"))));
    }

    private void showNames(Context ctx) {
        Crew crew = signIn.getCrew(Form.pathNumber(ctx, "crew"));
        NextPath next = NextPath.of(ctx.queryParam("next"));
        html.show(ctx, new NamesPage(views.of(ctx), crew, signIn.listCrew(crew.id()), next));
    }

    private void showPin(Context ctx) {
        html.show(ctx, new PinPage(views.of(ctx), person(ctx), NextPath.of(ctx.queryParam("next")), null));
    }

    private void tryPin(Context ctx) {
        Person person = person(ctx);
        Form form = Form.of(ctx);
        NextPath next = NextPath.of(form.text("next"));
        ctx.future(() -> limited(ctx, () -> signIn.signIn(person.id(), form.text("pin"), former(ctx)))
                .thenAccept(attempt -> {
                    switch (attempt.answer()) {
                        case RIGHT -> letIn(ctx, attempt, next);
                        case MUST_CHANGE -> html.show(ctx, new ChoosePinPage(views.of(ctx), person, next, "", null));
                        case WRONG, NOT_SIX_DIGITS ->
                            html.show(
                                    ctx,
                                    UNPROCESSABLE,
                                    new PinPage(
                                            views.of(ctx),
                                            person,
                                            next,
                                            attempt.answer().refusal()));
                    }
                }));
    }

    private void choosePin(Context ctx) {
        Person person = person(ctx);
        Form form = Form.of(ctx);
        NextPath next = NextPath.of(form.text("next"));
        String pin = form.text("pin");
        String chosen = form.text("new-pin");
        Optional<PinFault> fault = PinRules.findFault(pin, chosen, form.text("again-pin"));
        if (fault.isPresent()) {
            String word = fault.get().word();
            html.show(ctx, UNPROCESSABLE, new ChoosePinPage(views.of(ctx), person, next, word, null));
            return;
        }
        ctx.future(() -> limited(ctx, () -> signIn.changePin(person.id(), pin, chosen, former(ctx)))
                .thenAccept(attempt -> {
                    if (attempt.answer() == Pins.Answer.RIGHT) {
                        letIn(ctx, attempt, next);
                    } else {
                        String refusal = attempt.answer().refusal();
                        html.show(ctx, UNPROCESSABLE, new ChoosePinPage(views.of(ctx), person, next, "", refusal));
                    }
                }));
    }

    /** Only what may have been a guess stays counted. */
    private CompletableFuture<SignIn.Attempt> limited(
            Context ctx, Supplier<CompletableFuture<SignIn.Attempt>> comparison) {
        String from = address.of(ctx);
        limit.take(from);
        return comparison.get().thenApply(attempt -> {
            if (attempt.answer() != Pins.Answer.WRONG) {
                limit.giveBack(from);
            }
            return attempt;
        });
    }

    private void letIn(Context ctx, SignIn.Attempt attempt, NextPath next) {
        cookies.startSession(ctx, attempt.token());
        ctx.redirect(next.value(), HttpStatus.SEE_OTHER);
    }

    private void signOut(Context ctx) {
        String token = former(ctx);
        cookies.endSession(ctx);
        ctx.future(
                () -> signIn.signOut(token).thenAccept(ended -> ctx.redirect(afterSignOut(ctx), HttpStatus.SEE_OTHER)));
    }

    /** Ending a session takes all cookies away; a shared tablet keeps its language all the same. */
    private String afterSignOut(Context ctx) {
        String language = cookies.language(ctx);
        return language != null && language.matches("[a-z]{2}")
                ? "/language/" + language + "?next=/sign-in"
                : "/sign-in";
    }

    private String former(Context ctx) {
        String token = cookies.session(ctx);
        return token == null ? "" : token;
    }

    private Person person(Context ctx) {
        long crew = Form.pathNumber(ctx, "crew");
        long person = Form.pathNumber(ctx, "person");
        return signIn.findPerson(crew, person).orElseThrow(() -> new NotFound("person " + person));
    }
}
