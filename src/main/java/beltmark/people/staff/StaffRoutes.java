package beltmark.people.staff;

import beltmark.people.staff.StaffPage.Refused;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** One person's crews, roles, leaving and coming back; for admins. */
public final class StaffRoutes {

    private static final int UNPROCESSABLE = 422;

    private final Staff staff;
    private final Views views;
    private final Html html;

    public StaffRoutes(Staff staff, Views views, Html html) {
        this.staff = staff;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/people/gone", this::gone, Role.ADMIN);
        routes.get("/people/{person}", this::show, Role.ADMIN);
        routes.post("/people/{person}/move", this::move, Role.ADMIN);
        routes.post("/people/{person}/roles", this::changeRoles, Role.ADMIN);
        routes.post("/people/{person}/leave", this::leave, Role.ADMIN);
        routes.post("/people/{person}/return", this::comeBack, Role.ADMIN);
    }

    private void gone(Context ctx) {
        html.show(ctx, new GonePage(views.of(ctx), staff.listGone()));
    }

    private void show(Context ctx) {
        html.show(ctx, page(ctx, null));
    }

    private void move(Context ctx) {
        reply(ctx, "move", staff.move(change(ctx), crew(ctx)));
    }

    private void changeRoles(Context ctx) {
        reply(ctx, "roles", staff.changeRoles(change(ctx), roles(ctx)));
    }

    private void leave(Context ctx) {
        reply(ctx, "leave", staff.leave(change(ctx)));
    }

    private void comeBack(Context ctx) {
        CompletableFuture<Staff.Return> done = staff.comeBack(change(ctx), crew(ctx));
        ctx.future(() -> done.thenAccept(back -> {
            if (back.refusal().isPresent()) {
                refuse(ctx, "return", back.refusal().get());
            } else {
                html.show(ctx, new BackPage(views.of(ctx), staff.get(person(ctx)), back.pin()));
            }
        }));
    }

    private void reply(Context ctx, String form, CompletableFuture<Optional<StaffRefusal>> done) {
        ctx.future(() -> done.thenAccept(refusal -> {
            if (refusal.isPresent()) {
                refuse(ctx, form, refusal.get());
            } else {
                ctx.redirect("/people/" + person(ctx), HttpStatus.SEE_OTHER);
            }
        }));
    }

    private void refuse(Context ctx, String form, StaffRefusal refusal) {
        String sentence = views.of(ctx).text("staff.refusal." + refusal.word());
        html.show(
                ctx,
                UNPROCESSABLE,
                page(ctx, new Refused(form, sentence, Form.of(ctx).text("day"))));
    }

    private StaffPage page(Context ctx, @Nullable Refused refused) {
        View view = views.of(ctx);
        return new StaffPage(
                view, staff.get(person(ctx)), staff.listCrews(), staff.today(), OperationId.fresh(), refused);
    }

    private StaffChange change(Context ctx) {
        Form form = Form.of(ctx);
        return new StaffChange(views.visitor(ctx), person(ctx), day(form.text("day")), form.operation());
    }

    private static long person(Context ctx) {
        return Form.pathNumber(ctx, "person");
    }

    private static long crew(Context ctx) {
        return Form.of(ctx).number("crew").orElseThrow(() -> new NotFound("no crew was chosen"));
    }

    private static Set<Role> roles(Context ctx) {
        Form form = Form.of(ctx);
        return Role.ofPeople().stream()
                .filter(role -> form.all("role").contains(role.word()))
                .collect(Collectors.toSet());
    }

    private static Optional<LocalDate> day(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
