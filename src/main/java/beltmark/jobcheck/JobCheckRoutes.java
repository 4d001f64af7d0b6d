package beltmark.jobcheck;

import beltmark.web.Download;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;

/** The address of the job check, and of the same as a file. */
public final class JobCheckRoutes {

    private final JobCheck check;
    private final Views views;
    private final Html html;

    public JobCheckRoutes(JobCheck check, Views views, Html html) {
        this.check = check;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/job-check", this::show, Role.SUPERVISOR, Role.COORDINATOR);
        routes.get("/job-check.csv", this::export, Role.SUPERVISOR, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        Visitor visitor = views.visitor(ctx);
        View view = views.of(ctx);
        JobQuery query = query(ctx);
        JobCheckPages pages = new JobCheckPages(view, check.content().cards(), check.listCrews(visitor), query);
        html.show(ctx, query.isAsked() ? pages.answered(check.check(visitor, query)) : pages.unasked());
    }

    private void export(Context ctx) {
        JobQuery query = query(ctx);
        if (!query.isAsked()) {
            throw new NotFound("no hardware card");
        }
        JobCheck.Answer answer = check.check(views.visitor(ctx), query);
        Download.csv(
                ctx,
                "job-check-" + query.asOf().on(),
                new JobCheckCsv(views.of(ctx).words(), query).write(answer));
    }

    private JobQuery query(Context ctx) {
        return JobQuery.of(Form.ofAddress(ctx), check.content(), check.today());
    }
}
