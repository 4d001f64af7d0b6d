package beltmark.desk;

import beltmark.web.Csv;
import beltmark.web.Download;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.Option;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The addresses of the coordinator's desk. */
public final class DeskRoutes {

    private static final String DESK = "/desk";
    private static final String ORDER = "/desk/orders/{order}";
    private static final int NOT_RECORDED = 422;

    private final Orders orders;
    private final Inspections inspections;
    private final Views views;
    private final Html html;

    /**
     * @param orders retraining orders
     * @param inspections inspections of procedures
     * @param views what pages share
     * @param html how they are rendered
     */
    public DeskRoutes(Orders orders, Inspections inspections, Views views, Html html) {
        this.orders = orders;
        this.inspections = inspections;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes, all for the coordinator. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get(DESK, this::show, Role.COORDINATOR);
        routes.get("/desk/orders/new", this::orderForm, Role.COORDINATOR);
        routes.post("/desk/orders", this::makeOrder, Role.COORDINATOR);
        routes.get(ORDER, this::showOrder, Role.COORDINATOR);
        routes.post(ORDER + "/close", this::closeOrder, Role.COORDINATOR);
        routes.get("/desk/inspections/new", this::inspectionForm, Role.COORDINATOR);
        routes.post("/desk/inspections", this::makeInspection, Role.COORDINATOR);
        routes.get("/desk/certification", this::certification, Role.COORDINATOR);
        routes.get("/desk/certification.csv", this::export, Role.COORDINATOR);
    }

    private void show(Context ctx) {
        html.show(ctx, pages(ctx).desk(orders.listOpen(), inspections.listMachines()));
    }

    private void orderForm(Context ctx) {
        html.show(ctx, pages(ctx).orderForm(OrderForm.blank(orders.today()), orders.listPeople(), Map.of()));
    }

    private void makeOrder(Context ctx) {
        String operation = Form.of(ctx).operation().value();
        OrderForm form = OrderForm.of(Form.of(ctx));
        List<Option> people = orders.listPeople();
        Map<String, String> faults = form.faults(people, orders.today());
        if (!faults.isEmpty()) {
            html.show(ctx, NOT_RECORDED, pages(ctx).orderForm(form, people, faults));
            return;
        }
        long visitor = views.visitor(ctx).personId();
        ctx.future(() -> orders.make(visitor, Long.parseLong(form.person()), form.toBody(), operation)
                .thenAccept(record -> ctx.redirect(DESK + "/orders/" + record, HttpStatus.SEE_OTHER)));
    }

    private void showOrder(Context ctx) {
        html.show(ctx, pages(ctx).order(orders.get(number(ctx)), ClosingForm.BLANK, List.of()));
    }

    private void closeOrder(Context ctx) {
        long order = number(ctx);
        String operation = Form.of(ctx).operation().value();
        ClosingForm form = ClosingForm.of(Form.of(ctx));
        long visitor = views.visitor(ctx).personId();
        ctx.future(() -> orders.close(visitor, order, form, operation).thenAccept(missing -> {
            if (missing.isEmpty()) {
                ctx.redirect(DESK + "/orders/" + order, HttpStatus.SEE_OTHER);
            } else {
                html.show(ctx, NOT_RECORDED, pages(ctx).order(orders.get(order), form, missing));
            }
        }));
    }

    private void inspectionForm(Context ctx) {
        showInspection(ctx, HttpStatus.OK.getCode(), InspectionForm.blank(orders.today()), Map.of());
    }

    private void showInspection(Context ctx, int status, InspectionForm form, Map<String, String> faults) {
        List<Machine> machines = inspections.listMachines();
        html.show(ctx, status, pages(ctx).inspectionForm(form, machines, orders.listPeople(), faults));
    }

    private void makeInspection(Context ctx) {
        String operation = Form.of(ctx).operation().value();
        InspectionForm form = InspectionForm.of(Form.of(ctx));
        List<Machine> machines = inspections.listMachines();
        Map<String, String> faults = form.faults(machines, orders.listPeople(), orders.today());
        if (!faults.isEmpty()) {
            showInspection(ctx, NOT_RECORDED, form, faults);
            return;
        }
        Machine machine = machines.stream()
                .filter(one -> one.procedure().equals(form.procedure()))
                .findFirst()
                .orElseThrow();
        long visitor = views.visitor(ctx).personId();
        ctx.future(() -> inspections
                .make(visitor, form.toBody(machine), operation)
                .thenAccept(record -> ctx.redirect(DESK + "#machines", HttpStatus.SEE_OTHER)));
    }

    private void certification(Context ctx) {
        html.show(ctx, pages(ctx).certification(orders.listTrained()));
    }

    private void export(Context ctx) {
        View view = views.of(ctx);
        List<String> columns = List.of(view.text("desk.certification.name"), view.text("desk.certification.days"));
        List<List<String>> rows = orders.listTrained().stream()
                .map(one -> List.of(
                        one.name(), one.days().stream().map(LocalDate::toString).collect(Collectors.joining("; "))))
                .toList();
        Download.csv(ctx, "training-certification", Csv.of(columns, rows));
    }

    private static long number(Context ctx) {
        return Form.pathNumber(ctx, "order");
    }

    private DeskPages pages(Context ctx) {
        return new DeskPages(views.of(ctx), orders.today());
    }
}
