package beltmark.practice.pack;

import beltmark.core.grading.PartGrade;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.print.Paper;
import beltmark.print.Pdf;
import beltmark.problem.BlankFields;
import beltmark.texts.Texts;
import beltmark.web.Download;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The addresses of paper packs. */
public final class PackRoutes {

    private final Packs packs;
    private final Texts texts;
    private final Views views;
    private final Html html;
    private final Pdf pdf;

    /**
     * @param packs the feature
     * @param texts every language, since a sheet is in the language of its person
     * @param views what pages share
     * @param html how they are rendered
     * @param pdf how they are printed
     */
    public PackRoutes(Packs packs, Texts texts, Views views, Html html, Pdf pdf) {
        this.packs = packs;
        this.texts = texts;
        this.views = views;
        this.html = html;
        this.pdf = pdf;
    }

    /** Adds the routes; sheets and their key are the trainer's. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/packs", this::list, Role.TRAINER);
        routes.post("/packs", this::make, Role.TRAINER);
        routes.get("/packs/{pack}", this::show, Role.TRAINER);
        routes.get("/packs/{pack}/sheets.pdf", this::sheets, Role.TRAINER);
        routes.get("/packs/{pack}/key.pdf", this::key, Role.TRAINER);
        routes.get("/packs/{pack}/enter/{person}", this::form, Role.TRAINER);
        routes.post("/packs/{pack}/enter/{person}", this::enter, Role.TRAINER);
    }

    private void list(Context ctx) {
        html.show(ctx, page(ctx, new PackForm(List.of(), "3", List.of(), Map.of())));
    }

    private PacksPage page(Context ctx, PackForm form) {
        Visitor trainer = views.visitor(ctx);
        return new PacksPage(views.of(ctx), packs.families(), packs.receivers(trainer), packs.packs(trainer), form);
    }

    private void make(Context ctx) {
        Visitor trainer = views.visitor(ctx);
        Form sent = Form.of(ctx);
        PackForm form = PackForm.read(sent, packs.families(), packs.receivers(trainer));
        if (!form.faults().isEmpty()) {
            html.show(ctx, 422, page(ctx, form));
            return;
        }
        ctx.future(() -> packs.make(trainer, form.families(), form.number(), form.people(), sent.operation())
                .thenAccept(seq -> ctx.redirect("/packs/" + seq, HttpStatus.SEE_OTHER)));
    }

    private Pack pack(Context ctx) {
        return packs.get(views.visitor(ctx), Form.pathNumber(ctx, "pack"));
    }

    private void show(Context ctx) {
        html.show(ctx, new PackPage(views.of(ctx), pack(ctx)));
    }

    private void sheets(Context ctx) {
        print(ctx, pack(ctx), false);
    }

    private void key(Context ctx) {
        print(ctx, pack(ctx), true);
    }

    private void print(Context ctx, Pack pack, boolean key) {
        View view = views.of(ctx);
        SheetViews sheets = new SheetViews(packs, texts);
        Paper paper = Paper.of(ctx.queryParam("paper"), views.visitor(ctx).graduation());
        byte[] file = key
                ? pdf.of(new KeyPage(view, pack, sheets.of(pack)), paper)
                : pdf.of(new SheetsPage(view, pack, sheets.of(pack)), paper);
        Download.pdf(ctx, (key ? "key-" : "sheets-") + pack.seq(), file);
    }

    private void form(Context ctx) {
        Pack pack = pack(ctx);
        Pack.Sheet sheet = packs.getSheet(pack, Form.pathNumber(ctx, "person"));
        html.show(ctx, entry(ctx, pack, sheet, Map.of(), Map.of()));
    }

    private EnterPage entry(
            Context ctx,
            Pack pack,
            Pack.Sheet sheet,
            Map<String, Map<String, String>> written,
            Map<String, PartGrade> grades) {
        return new EnterPage(
                views.of(ctx),
                pack,
                sheet,
                new EntryFields(packs, texts, sheet, written, grades).problems(),
                OperationId.fresh());
    }

    private void enter(Context ctx) {
        Pack pack = pack(ctx);
        Pack.Sheet sheet = packs.getSheet(pack, Form.pathNumber(ctx, "person"));
        Form form = Form.of(ctx);
        Map<String, Map<String, String>> written = written(sheet, form);
        Map<String, PartGrade> grades = packs.judge(sheet, written);
        if (grades.values().stream().anyMatch(grade -> !grade.isReadable())) {
            html.show(ctx, 422, entry(ctx, pack, sheet, written, grades));
            return;
        }
        ctx.future(() -> packs.enter(views.visitor(ctx), pack, sheet, written, form.operation())
                .thenAccept(done -> ctx.redirect("/packs/" + pack.seq(), HttpStatus.SEE_OTHER)));
    }

    private Map<String, Map<String, String>> written(Pack.Sheet sheet, Form form) {
        Map<String, Map<String, String>> written = new LinkedHashMap<>();
        for (int place = 0; place < sheet.problems().size(); place++) {
            Problem problem = packs.problem(sheet.problems().get(place));
            for (Part part : problem.parts()) {
                String key = place + "." + part.id();
                written.put(key, BlankFields.typed(part, form, key + "."));
            }
        }
        return written;
    }
}
