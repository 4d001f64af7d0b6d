package beltmark.glossary;

import beltmark.web.Html;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;

/** The address of the words of the trade. */
public final class GlossaryRoutes {

    private final Views views;
    private final Html html;

    /**
     * @param views what pages share
     * @param html how they are rendered
     */
    public GlossaryRoutes(Views views, Html html) {
        this.views = views;
        this.html = html;
    }

    /** Adds the route; everybody who is signed in may look. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/glossary", this::show, Role.SIGNED_IN);
    }

    private void show(Context ctx) {
        html.show(ctx, new GlossaryPage(views.of(ctx)));
    }
}
