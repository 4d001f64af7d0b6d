package beltmark.procedure;

import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Map;

/** The addresses of the written procedures. */
public final class ProcedureRoutes {

    private static final String ALL = "/procedures";
    private static final String CHANGE = "/procedures/{procedure}/change";
    private static final int NOT_KEPT = 422;

    private final Procedures procedures;
    private final Views views;
    private final Html html;

    /**
     * @param procedures what is done with them
     * @param views what pages share
     * @param html how they are rendered
     */
    public ProcedureRoutes(Procedures procedures, Views views, Html html) {
        this.procedures = procedures;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes; everybody may read, the coordinator enters and changes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get(ALL, this::list, Role.SIGNED_IN);
        routes.post(ALL, this::enter, Role.COORDINATOR);
        routes.get("/procedures/enter", this::form, Role.COORDINATOR);
        routes.get("/procedures/{procedure}", this::show, Role.SIGNED_IN);
        routes.get(CHANGE, this::changeForm, Role.COORDINATOR);
        routes.post(CHANGE, this::change, Role.COORDINATOR);
    }

    private void list(Context ctx) {
        html.show(ctx, pages(ctx).list(procedures.list()));
    }

    private void show(Context ctx) {
        html.show(ctx, pages(ctx).show(procedures.get(procedure(ctx))));
    }

    private void form(Context ctx) {
        html.show(ctx, pages(ctx).enter(ProcedureForm.EMPTY, Map.of()));
    }

    private void changeForm(Context ctx) {
        String id = procedure(ctx);
        html.show(ctx, pages(ctx).change(id, ProcedureForm.of(procedures.get(id).card()), Map.of()));
    }

    private void enter(Context ctx) {
        ProcedureForm form = ProcedureForm.read(Form.of(ctx));
        Map<String, String> faults = form.faults(false);
        if (faults.isEmpty() && procedures.isTaken(form.newId())) {
            faults.put("machine", "taken");
        }
        if (faults.isEmpty()) {
            keep(ctx, form, form.newId());
        } else {
            html.show(ctx, NOT_KEPT, pages(ctx).enter(form, faults));
        }
    }

    private void change(Context ctx) {
        String id = procedures.get(procedure(ctx)).card().id();
        ProcedureForm form = ProcedureForm.read(Form.of(ctx));
        Map<String, String> faults = form.faults(true);
        if (faults.isEmpty()) {
            keep(ctx, form, id);
        } else {
            html.show(ctx, NOT_KEPT, pages(ctx).change(id, form, faults));
        }
    }

    private void keep(Context ctx, ProcedureForm form, String id) {
        long person = views.visitor(ctx).personId();
        String operation = Form.of(ctx).operation().value();
        ctx.future(() -> procedures
                .keep(person, form.toCard(id), form.reason(), operation)
                .thenAccept(kept -> ctx.redirect(ALL + "/" + kept, HttpStatus.SEE_OTHER)));
    }

    private static String procedure(Context ctx) {
        return ctx.pathParam("procedure");
    }

    private ProcedurePages pages(Context ctx) {
        return new ProcedurePages(views.of(ctx));
    }
}
