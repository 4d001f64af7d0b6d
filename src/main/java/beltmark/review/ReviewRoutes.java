package beltmark.review;

import beltmark.core.lockout.Quiz;
import beltmark.review.first.Period;
import beltmark.web.Download;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.OptionalLong;

/** The addresses of the lockout review. */
public final class ReviewRoutes {

    private static final String SITTING = "sitting";
    private static final String CREW = "crew";
    private static final String PAPER = "paper";
    private static final long MOST_PAGES = 1_000_000;

    private final Review review;
    private final Views views;
    private final Html html;

    /**
     * @param review what can be looked up
     * @param views what pages share
     * @param html how they are rendered
     */
    public ReviewRoutes(Review review, Views views, Html html) {
        this.review = review;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/review", this::overview, Role.COORDINATOR, Role.ADMIN);
        routes.get("/review/sittings/{sitting}", this::sitting, Role.COORDINATOR, Role.ADMIN);
        routes.get("/review/lockout.csv", this::export, Role.COORDINATOR, Role.ADMIN);
    }

    private void overview(Context ctx) {
        View view = views.of(ctx);
        Form typed = Form.ofAddress(ctx);
        Period period = Period.parse(typed.text("from"), typed.text("to")).orElseThrow(() -> new NotFound("no month"));
        Quiz paper = review.getPaper(typed.text(PAPER));
        Scope scope = new Scope(paper.id(), crew(ctx), period, page(typed));
        html.show(ctx, new ReviewPages(view, review.listPapers(), paper, review.overview(scope)).page());
    }

    private void sitting(Context ctx) {
        long sitting = Form.pathNumber(ctx, SITTING);
        SittingRecords records = review.findSitting(sitting).orElseThrow(() -> new NotFound("sitting " + sitting));
        html.show(ctx, new SittingPages(views.of(ctx)).page(records));
    }

    private void export(Context ctx) {
        String paper = review.getPaper(Form.ofAddress(ctx).text(PAPER)).id();
        String file = new ReviewCsv(views.of(ctx).words()).write(review.listFinished(paper, crew(ctx)));
        Download.csv(ctx, "lockout-quiz", file);
    }

    private static int page(Form typed) {
        OptionalLong page = typed.number("page");
        return (int) Math.max(1, Math.min(MOST_PAGES, page.orElse(1)));
    }

    /** The crew to look at; without one, all of them. */
    private long crew(Context ctx) {
        String typed = ctx.queryParam(CREW);
        if (typed == null || typed.isEmpty()) {
            return Scope.ALL_CREWS;
        }
        return review.requireCrew(Form.ofAddress(ctx).number(CREW).orElseThrow(() -> new NotFound("no crew")));
    }
}
