package beltmark.people;

import beltmark.core.units.Graduation;
import beltmark.people.PinRules.PinFault;
import beltmark.texts.Language;
import beltmark.web.Cookies;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.Role;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How a person wants lengths and language, and the own PIN. */
public final class SettingsRoutes {

    private static final int UNPROCESSABLE = 422;

    private final People people;
    private final SignIn signIn;
    private final Set<Language> languages;
    private final Cookies cookies;
    private final Views views;
    private final Html html;

    /**
     * @param people keeps the settings
     * @param signIn changes the PIN
     * @param languages what can be chosen
     * @param cookies where the session token is
     * @param views what pages share
     * @param html how they are rendered
     */
    @SuppressWarnings("TooManyParameters") // wiring
    public SettingsRoutes(
            People people, SignIn signIn, Set<Language> languages, Cookies cookies, Views views, Html html) {
        this.people = people;
        this.signIn = signIn;
        this.languages = languages;
        this.cookies = cookies;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/settings", this::show, Role.SIGNED_IN);
        routes.post("/settings", this::change, Role.SIGNED_IN);
        routes.post("/settings/pin", this::changePin, Role.SIGNED_IN);
    }

    private void show(Context ctx) {
        String stored = ctx.queryParam("stored");
        html.show(ctx, page(ctx, "settings".equals(stored) || "pin".equals(stored) ? stored : "", Set.of(), "", null));
    }

    private void change(Context ctx) {
        Form form = Form.of(ctx);
        Optional<Graduation> graduation = SettingsPage.GRADUATIONS.stream()
                .filter(offered -> SettingsPage.word(offered).equals(form.text("graduation")))
                .findFirst();
        Optional<Language> language = languages.stream()
                .filter(offered -> offered.tag().equals(form.text("language")))
                .findFirst();
        Set<String> unknown = new HashSet<>();
        if (graduation.isEmpty()) {
            unknown.add("graduation");
        }
        if (language.isEmpty()) {
            unknown.add("language");
        }
        if (!unknown.isEmpty()) {
            html.show(ctx, UNPROCESSABLE, page(ctx, "", unknown, "", null));
            return;
        }
        ctx.future(() -> people.changeSettings(views.visitor(ctx).personId(), language.get(), graduation.get())
                .thenAccept(stored -> ctx.redirect("/settings?stored=settings", HttpStatus.SEE_OTHER)));
    }

    private void changePin(Context ctx) {
        Form form = Form.of(ctx);
        String chosen = form.text("new-pin");
        Optional<PinFault> fault = PinRules.findFault(form.text("pin"), chosen, form.text("again-pin"));
        if (fault.isPresent()) {
            html.show(ctx, UNPROCESSABLE, page(ctx, "", Set.of(), fault.get().word(), null));
            return;
        }
        long personId = views.visitor(ctx).personId();
        ctx.future(() -> signIn.changePin(personId, form.text("pin"), chosen, "")
                .thenAccept(attempt -> {
                    if (attempt.answer() == Pins.Answer.RIGHT) {
                        cookies.startSession(ctx, attempt.token());
                        ctx.redirect("/settings?stored=pin", HttpStatus.SEE_OTHER);
                    } else {
                        html.show(
                                ctx,
                                UNPROCESSABLE,
                                page(ctx, "", Set.of(), "", attempt.answer().refusal()));
                    }
                }));
    }

    private SettingsPage page(Context ctx, String stored, Set<String> unknown, String fault, @Nullable String refused) {
        Visitor visitor = views.visitor(ctx);
        return new SettingsPage(views.of(ctx), visitor, languages, stored, unknown, fault, refused);
    }
}
