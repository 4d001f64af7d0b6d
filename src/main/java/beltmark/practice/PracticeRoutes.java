package beltmark.practice;

import beltmark.core.grading.Leaving;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.practice.Practice.Answered;
import beltmark.practice.Practice.Outcome;
import beltmark.problem.BlankFields;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.View;
import beltmark.web.Views;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;

/** The addresses of practice. */
public final class PracticeRoutes {

    private static final String PROBLEM = "/practice/{family}/{code}";

    private final Practice practice;
    private final Views views;
    private final Html html;
    private final RandomGenerator random;

    /**
     * @param practice the feature
     * @param views what pages share
     * @param html how they are rendered
     * @param random where fresh problem codes come from
     */
    public PracticeRoutes(Practice practice, Views views, Html html, RandomGenerator random) {
        this.practice = practice;
        this.views = views;
        this.html = html;
        this.random = random;
    }

    /** Adds the routes; everybody who is signed in may practise. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get("/practice", this::skills, Role.SIGNED_IN);
        routes.get("/practice/{family}", this::start, Role.SIGNED_IN);
        routes.get(PROBLEM, this::show, Role.SIGNED_IN);
        routes.post(PROBLEM + "/{part}", this::answer, Role.SIGNED_IN);
        routes.post(PROBLEM + "/{part}/leave", this::leave, Role.SIGNED_IN);
    }

    private void skills(Context ctx) {
        View view = views.of(ctx);
        html.show(ctx, new SkillsPage(view, practice.skills(views.visitor(ctx), view.words())));
    }

    /** Leads to a fresh problem, or to the one of a typed code. */
    private void start(Context ctx) {
        String family = practice.getFamily(ctx.pathParam("family")).id();
        String typed = ctx.queryParam("code");
        Optional<ProblemCode> code = typed == null ? Optional.of(ProblemCode.fresh(random)) : ProblemCode.parse(typed);
        code.ifPresentOrElse(
                known -> ctx.redirect(path(family, known.text()), HttpStatus.SEE_OTHER),
                () -> html.show(ctx, 422, new CodePage(views.of(ctx), family, typed == null ? "" : typed)));
    }

    private void show(Context ctx) {
        Problem problem = problem(ctx);
        if (!problem.code().text().equals(ctx.pathParam("code"))) {
            ctx.redirect(path(problem.family(), problem.code().text()), HttpStatus.SEE_OTHER);
            return;
        }
        Attempt attempt = practice.attempt(views.visitor(ctx), problem);
        html.show(ctx, new ProblemPages(views.of(ctx), attempt).page(null));
    }

    private void answer(Context ctx) {
        Problem problem = problem(ctx);
        Form form = Form.of(ctx);
        Part part = part(ctx, problem);
        Map<String, String> typed = BlankFields.typed(part, form);
        ctx.future(() -> practice.answer(views.visitor(ctx), problem, part.id(), typed, form.operation())
                .thenAccept(answered -> reply(ctx, answered, typed)));
    }

    private void leave(Context ctx) {
        Problem problem = problem(ctx);
        Form form = Form.of(ctx);
        Leaving how = Stream.of(Leaving.values())
                .filter(known -> known.id().equals(form.text("how")))
                .findFirst()
                .orElseThrow(() -> new BadRequestResponse("no way of leaving a part"));
        ctx.future(() -> practice.leave(
                        views.visitor(ctx), problem, part(ctx, problem).id(), how, form.operation())
                .thenAccept(answered -> reply(ctx, answered, Map.of())));
    }

    private void reply(Context ctx, Answered answered, Map<String, String> typed) {
        Problem problem = answered.attempt().working().problem();
        ProblemPages pages = new ProblemPages(views.of(ctx), answered.attempt());
        if (answered.outcome() == Outcome.RECORDED) {
            ctx.redirect(path(problem.family(), problem.code().text()) + "#now", HttpStatus.SEE_OTHER);
        } else if (answered.outcome() == Outcome.UNREADABLE) {
            html.show(ctx, 422, pages.page(answered.grade(), typed, "practice.once-more"));
        } else {
            html.show(ctx, 409, pages.page("practice.not-open"));
        }
    }

    private Problem problem(Context ctx) {
        return practice.getProblem(ctx.pathParam("family"), ctx.pathParam("code"));
    }

    private static Part part(Context ctx, Problem problem) {
        String id = ctx.pathParam("part");
        return problem.parts().stream()
                .filter(part -> part.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotFound("no part of that id in " + problem.family()));
    }

    private static String path(String family, String code) {
        return "/practice/" + family + "/" + code;
    }
}
