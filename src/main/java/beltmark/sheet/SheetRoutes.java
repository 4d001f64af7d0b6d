package beltmark.sheet;

import beltmark.content.Content;
import beltmark.core.sheet.SetupSheet;
import beltmark.sheet.Sheets.Opened;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.Role;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Map;

/** The addresses of set-up sheets. */
public final class SheetRoutes {

    private final Sheets sheets;
    private final Content content;
    private final Views views;
    private final Html html;

    public SheetRoutes(Sheets sheets, Content content, Views views, Html html) {
        this.sheets = sheets;
        this.content = content;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes; everybody who is signed in may work out a sheet and keep it for the own crew. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/sheet", this::form, Role.SIGNED_IN);
        routes.get("/sheet/show", this::show, Role.SIGNED_IN);
        routes.post("/sheet", this::save, Role.SIGNED_IN);
        routes.get("/sheet/saved", this::list, Role.SIGNED_IN);
        routes.get("/sheet/saved/{record}", this::open, Role.SIGNED_IN);
    }

    private void form(Context ctx) {
        showForm(ctx, 200, SheetForm.of(Form.ofAddress(ctx)), Map.of());
    }

    private void show(Context ctx) {
        SheetForm form = SheetForm.of(Form.ofAddress(ctx));
        SheetReading.Read read = read(ctx, form);
        SheetForm spelt = spelt(ctx, form);
        if (read.installation().isEmpty()) {
            showForm(ctx, 422, form, read.faults());
        } else if (!spelt.equals(form)) {
            // an address may be sent to somebody with another tape: there every unit is spelt out
            ctx.redirect("/sheet/show?" + spelt.query(), HttpStatus.SEE_OTHER);
        } else {
            SetupSheet sheet = SetupSheet.of(read.installation().get());
            html.show(ctx, new SheetPages(views.of(ctx), form, sheet).page(null));
        }
    }

    private void save(Context ctx) {
        Form sent = Form.of(ctx);
        SheetForm form = SheetForm.of(sent);
        SheetReading.Read read = read(ctx, form);
        if (read.installation().isEmpty()) {
            showForm(ctx, 422, form, read.faults());
            return;
        }
        SetupSheet sheet = SetupSheet.of(read.installation().get());
        Visitor visitor = views.visitor(ctx);
        ctx.future(() -> sheets.save(visitor, spelt(ctx, form), sheet, sent.operation())
                .thenAccept(record -> ctx.redirect("/sheet/saved/" + record, HttpStatus.SEE_OTHER)));
    }

    private void list(Context ctx) {
        html.show(ctx, new SavedPage(views.of(ctx), sheets.list(views.visitor(ctx))));
    }

    private void open(Context ctx) {
        Opened opened = sheets.get(views.visitor(ctx), Form.pathNumber(ctx, "record"));
        SheetForm form = SheetForm.ofKept(opened.record().typed());
        SheetReading.Read read = read(ctx, form);
        if (read.installation().isEmpty()) {
            showForm(ctx, 200, form, read.faults());
            return;
        }
        SetupSheet sheet = SetupSheet.of(read.installation().get());
        html.show(ctx, new SheetPages(views.of(ctx), form, sheet).page(opened));
    }

    private SheetReading.Read read(Context ctx, SheetForm form) {
        return SheetReading.of(form, content, views.of(ctx).words());
    }

    private SheetForm spelt(Context ctx, SheetForm form) {
        return form.withUnits(views.visitor(ctx).graduation().unit());
    }

    private void showForm(Context ctx, int status, SheetForm form, Map<SheetField, String> faults) {
        html.show(ctx, status, new EntryPage(views.of(ctx), form, faults, content.cards()));
    }
}
