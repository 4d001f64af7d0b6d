package beltmark.hardware;

import beltmark.content.Content;
import beltmark.core.setup.HardwareCard;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;

/** The addresses of the hardware cards. */
public final class HardwareRoutes {

    private final Content content;
    private final Views views;
    private final Html html;

    /**
     * @param content where the cards are
     * @param views what pages share
     * @param html how they are rendered
     */
    public HardwareRoutes(Content content, Views views, Html html) {
        this.content = content;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes; everybody who is signed in may look. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/hardware", this::list, Role.SIGNED_IN);
        routes.get("/hardware/{card}", this::show, Role.SIGNED_IN);
    }

    private void list(Context ctx) {
        html.show(ctx, new CardsPage(views.of(ctx), content.cards()));
    }

    private void show(Context ctx) {
        HardwareCard card = content.findCard(ctx.pathParam("card")).orElseThrow(() -> new NotFound("no such card"));
        html.show(ctx, new CardPage(views.of(ctx), card));
    }
}
