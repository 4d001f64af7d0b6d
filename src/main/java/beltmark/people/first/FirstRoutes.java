package beltmark.people.first;

import beltmark.core.units.Graduation;
import beltmark.people.SettingsPage;
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
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The page that is only there while nobody is on the site. */
public final class FirstRoutes {

    private static final int UNPROCESSABLE = 422;

    private final FirstAdmin first;
    private final AddressLimit limit;
    private final ClientAddress address;
    private final Cookies cookies;
    private final Views views;
    private final Html html;

    /**
     * @param first puts the admin on the site
     * @param limit how often one address may try a code
     * @param address whom requests come from
     * @param cookies where the session token goes
     * @param views what pages share
     * @param html how they are rendered
     */
    @SuppressWarnings("TooManyParameters") // wiring
    public FirstRoutes(
            FirstAdmin first, AddressLimit limit, ClientAddress address, Cookies cookies, Views views, Html html) {
        this.first = first;
        this.limit = limit;
        this.address = address;
        this.cookies = cookies;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/setup", this::show, Role.ANYONE);
        routes.post("/setup", this::begin, Role.ANYONE);
    }

    private void show(Context ctx) {
        requireOpen();
        View view = views.of(ctx);
        String graduation = SettingsPage.word(view.words().graduation());
        html.show(ctx, new FirstPage(view, view.text("first.crew-name"), "", graduation, Map.of()));
    }

    private void begin(Context ctx) {
        requireOpen();
        limit.take(address.of(ctx));
        FirstForm form = FirstForm.of(Form.of(ctx));
        Map<String, String> faults = new LinkedHashMap<>();
        if (!first.isCode(form.code())) {
            faults.put("code", "first.fault.code");
        }
        faults.putAll(form.faults());
        if (!faults.isEmpty()) {
            FirstPage page = new FirstPage(views.of(ctx), form.crew(), form.name(), form.graduation(), faults);
            html.show(ctx, UNPROCESSABLE, page);
            return;
        }
        View view = views.of(ctx);
        ctx.future(() -> first.begin(form, view.words().language(), graduation(form, view))
                .thenAccept(token -> letIn(ctx, token)));
    }

    private void letIn(Context ctx, Optional<String> token) {
        token.ifPresent(fresh -> cookies.startSession(ctx, fresh));
        ctx.redirect(token.isPresent() ? "/people" : "/sign-in", HttpStatus.SEE_OTHER);
    }

    private static Graduation graduation(FirstForm form, View view) {
        return SettingsPage.GRADUATIONS.stream()
                .filter(offered -> SettingsPage.word(offered).equals(form.graduation()))
                .findFirst()
                .orElse(view.words().graduation());
    }

    private void requireOpen() {
        if (!first.isOpen()) {
            throw new NotFound("the site has people");
        }
    }
}
