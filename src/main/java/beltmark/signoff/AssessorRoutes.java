package beltmark.signoff;

import beltmark.signoff.Assessors.Fault;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The addresses at which a coordinator appoints assessors. */
public final class AssessorRoutes {

    private static final String ONE = "/sign-off/assessors/{person}";

    private final Signoff signoff;
    private final Views views;
    private final Html html;

    public AssessorRoutes(Signoff signoff, Views views, Html html) {
        this.signoff = signoff;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes; before those of sign-off, whose people are found below the same address. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/sign-off/assessors", this::list, Role.COORDINATOR);
        routes.get(ONE, this::show, Role.COORDINATOR);
        routes.post(ONE, this::appoint, Role.COORDINATOR);
    }

    private void list(Context ctx) {
        html.show(ctx, new AssessorsPage(views.of(ctx), signoff.assessors().listCandidates()));
    }

    private void show(Context ctx) {
        show(ctx, candidate(ctx), AppointmentForm.blank(signoff.today()), null);
    }

    private void show(Context ctx, Fitter candidate, AppointmentForm form, @Nullable String fault) {
        AssessorPage page = new AssessorPage(
                views.of(ctx), candidate, signoff.assessors().listLines(candidate), form, fault, OperationId.fresh());
        html.show(ctx, fault == null ? 200 : 422, page);
    }

    private void appoint(Context ctx) {
        Form sent = Form.of(ctx);
        OperationId operation = sent.operation();
        Fitter candidate = candidate(ctx);
        Visitor coordinator = views.visitor(ctx);
        AppointmentForm form = AppointmentForm.of(sent);
        signoff.assessors().getCard(form.card());
        Optional<Appointment> read = form.read(candidate.name(), coordinator.name());
        Optional<Fault> fault = read.isEmpty()
                ? Optional.of(Fault.DAYS)
                : signoff.assessors().findFault(coordinator, candidate.id(), read.get());
        if (fault.isPresent()) {
            show(ctx, candidate, form, fault.get().id());
            return;
        }
        ctx.future(() -> signoff.assessors()
                .appoint(coordinator, candidate.id(), read.orElseThrow(), operation)
                .thenAccept(record -> ctx.redirect("/sign-off/assessors/" + candidate.id(), HttpStatus.SEE_OTHER)));
    }

    private Fitter candidate(Context ctx) {
        return signoff.assessors().getCandidate(Form.pathNumber(ctx, "person"));
    }
}
