package beltmark.today;

import beltmark.web.Html;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.List;

/** The start page, and the bare address of the site. */
public final class TodayRoutes {

    private final Today today;
    private final Views views;
    private final Html html;

    public TodayRoutes(Today today, Views views, Html html) {
        this.today = today;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/", this::sendOn, Role.ANYONE);
        routes.get("/today", this::show, Role.SIGNED_IN);
    }

    private void sendOn(Context ctx) {
        ctx.redirect(views.of(ctx).visitor() == null ? "/sign-in" : "/today", HttpStatus.SEE_OTHER);
    }

    private void show(Context ctx) {
        Visitor visitor = views.visitor(ctx);
        List<Errand> errands = Errand.listFor(visitor);
        View view = views.of(ctx);
        html.show(
                ctx,
                new TodayPage(
                        view,
                        visitor.name(),
                        errands.get(0),
                        today.drill(visitor, view.words()),
                        today.habits(visitor, view.words()),
                        errands.subList(1, errands.size())));
    }
}
