package beltmark.preview;

import beltmark.content.Content;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/** The addresses of the preview. */
public final class PreviewRoutes {

    private final Content content;
    private final Texts texts;
    private final Views views;
    private final Html html;
    private final RandomGenerator random;
    private final Reports reports;

    /**
     * @param content where the families are
     * @param texts the texts of every language, since a trainer looks at all of them
     * @param views what pages share
     * @param html how they are rendered
     * @param random where fresh problem codes come from
     */
    public PreviewRoutes(Content content, Texts texts, Views views, Html html, RandomGenerator random) {
        this.content = content;
        this.texts = texts;
        this.views = views;
        this.html = html;
        this.random = random;
        this.reports = new Reports(content.families());
    }

    /** Adds the routes; right answers and slips are for those who keep the content. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/preview", this::show, Role.TRAINER);
        routes.get("/preview/report", this::report, Role.TRAINER);
    }

    private void show(Context ctx) {
        View view = views.of(ctx);
        Form form = Form.ofAddress(ctx);
        ProblemFamily family = form.text("family").isEmpty()
                ? content.families().get(0)
                : content.findFamily(form.text("family")).orElseThrow(() -> new NotFound("no such family"));
        Optional<HardwareCard> card = content.findCard(form.text("card"));
        ProblemCode code = ProblemCode.parse(form.text("code")).orElseGet(() -> ProblemCode.fresh(random));
        Problem problem = card.map(family::on).orElse(family).problem(code);
        Words words = texts.words(language(form, view), graduation(form, view));
        html.show(
                ctx,
                new PreviewPage(
                        view,
                        words,
                        new Choices(content, texts.languages(), view.words()),
                        problem,
                        card.map(HardwareCard::id).orElse("")));
    }

    private Language language(Form form, View view) {
        return texts.languages().stream()
                .filter(language -> language.tag().equals(form.text("language")))
                .findFirst()
                .orElse(view.words().language());
    }

    private static Graduation graduation(Form form, View view) {
        return Stream.of(Graduation.values())
                .filter(graduation -> graduation.name().equals(form.text("graduation")))
                .findFirst()
                .orElse(view.words().graduation());
    }

    private void report(Context ctx) {
        html.show(ctx, new ReportPage(views.of(ctx), reports.all()));
    }
}
