package beltmark.people.intake;

import beltmark.texts.Language;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;

/** A roster handed in, looked at, and stored; for admins. */
public final class IntakeRoutes {

    private static final int UNPROCESSABLE = 422;
    private static final String ROSTER = "roster";

    private final Intake intake;
    private final Set<Language> languages;
    private final Views views;
    private final Html html;

    /**
     * @param intake stores rosters
     * @param languages the languages there are
     * @param views what pages share
     * @param html how they are rendered
     */
    public IntakeRoutes(Intake intake, Set<Language> languages, Views views, Html html) {
        this.intake = intake;
        this.languages = languages;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/people/import", this::show, Role.ADMIN);
        routes.post("/people/import", this::preview, Role.ADMIN);
        routes.post("/people/import/again", this::change, Role.ADMIN);
        routes.post("/people/import/confirm", this::confirm, Role.ADMIN);
    }

    private void show(Context ctx) {
        html.show(ctx, new IntakePage(views.of(ctx), languages, "", null));
    }

    private void preview(Context ctx) {
        String text = handedIn(ctx);
        Roster roster = reader(ctx).read(text);
        if (roster.fault() == null) {
            showPreview(ctx, 200, roster, text);
        } else {
            showFault(ctx, roster, text);
        }
    }

    /** The form once more with the rows in it; a form of its own, because the rows are too long for an address. */
    private void change(Context ctx) {
        html.show(ctx, new IntakePage(views.of(ctx), languages, Form.of(ctx).text(ROSTER), null));
    }

    private void confirm(Context ctx) {
        Form form = Form.of(ctx);
        OperationId operation = form.operation();
        String text = form.text(ROSTER);
        Roster roster = reader(ctx).read(text);
        if (roster.fault() != null) {
            showFault(ctx, roster, text);
        } else if (intake.isStored(operation)) {
            html.show(ctx, new ArrivedPage(views.of(ctx), List.of()));
        } else {
            ctx.future(() -> intake.store(views.visitor(ctx), roster.rows(), operation)
                    .thenAccept(arrivals -> reply(ctx, roster, text, arrivals)));
        }
    }

    private void reply(Context ctx, Roster roster, String text, List<Intake.Arrival> arrivals) {
        if (arrivals.isEmpty()) {
            showPreview(ctx, UNPROCESSABLE, roster, text);
        } else {
            html.show(ctx, new ArrivedPage(views.of(ctx), arrivals));
        }
    }

    private void showPreview(Context ctx, int status, Roster roster, String text) {
        Preview preview = intake.preview(roster.rows());
        html.show(ctx, status, new PreviewPage(views.of(ctx), preview, text, OperationId.fresh()));
    }

    private void showFault(Context ctx, Roster roster, String text) {
        View view = views.of(ctx);
        Roster.Fault fault = roster.fault();
        String value = fault == Roster.Fault.NO_COLUMN ? view.text("intake.column." + roster.value()) : roster.value();
        String error = fault == null ? null : view.text("intake.refused." + fault.word(), "value", value);
        html.show(ctx, UNPROCESSABLE, new IntakePage(view, languages, text, error));
    }

    private RosterReader reader(Context ctx) {
        return new RosterReader(views.of(ctx).words(), languages, intake.today());
    }

    /** The file when there is one, else what was pasted. */
    private static String handedIn(Context ctx) {
        UploadedFile file = ctx.uploadedFile("file");
        if (file == null || file.size() == 0) {
            return Form.of(ctx).text(ROSTER);
        }
        try (InputStream content = file.content()) {
            return RosterFile.decode(content.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
