package beltmark.outbox;

import beltmark.web.Assets;
import beltmark.web.Html;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;

/** The addresses of the outbox. */
public final class OutboxRoutes {

    private final Assets assets;
    private final Views views;
    private final Html html;

    public OutboxRoutes(Assets assets, Views views, Html html) {
        this.assets = assets;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        // a service worker may only look after the addresses below its own
        routes.get("/outbox-worker.js", this::worker, Role.ANYONE);
        routes.get("/outbox/token", this::token, Role.SIGNED_IN);
        routes.get("/outbox/away", ctx -> html.show(ctx, new AwayPage(views.of(ctx))), Role.SIGNED_IN);
    }

    private void worker(Context ctx) {
        Assets.Asset script = assets.get("outbox-worker.js");
        ctx.header("Cache-Control", "no-cache").contentType(script.type()).result(script.bytes());
    }

    /** Whose session it is, and the token that its forms must send back: what is kept belongs to one person. */
    private void token(Context ctx) {
        String whose = Long.toString(views.visitor(ctx).personId());
        ctx.contentType("text/plain; charset=utf-8")
                .result(whose + "\n" + views.of(ctx).csrf());
    }
}
