package beltmark.bank;

import beltmark.core.lockout.BankQuestion;
import beltmark.texts.Texts;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.Role;
import beltmark.web.Views;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.List;

/** The addresses of the question bank; they come before those of single sittings, which would match them too. */
public final class BankRoutes {

    private static final String BANK = "/lockout/bank";
    private static final String QUESTION = "/lockout/bank/{question}";
    private static final int NOT_TAKEN = 422;

    private final QuestionControl control;
    private final Texts texts;
    private final Views views;
    private final Html html;

    /**
     * @param control what is done with the bank
     * @param texts the questions in every language
     * @param views what pages share
     * @param html how they are rendered
     */
    public BankRoutes(QuestionControl control, Texts texts, Views views, Html html) {
        this.control = control;
        this.texts = texts;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes; the trainer may look, the coordinator change. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get(BANK, this::list, Role.COORDINATOR, Role.TRAINER);
        routes.post(BANK, this::chooseRules, Role.COORDINATOR);
        routes.get(QUESTION, this::show, Role.COORDINATOR, Role.TRAINER);
        routes.post(QUESTION, this::set, Role.COORDINATOR);
    }

    private void list(Context ctx) {
        html.show(ctx, pages(ctx).list(Form.ofAddress(ctx), false));
    }

    private void chooseRules(Context ctx) {
        Form form = Form.of(ctx);
        long person = views.visitor(ctx).personId();
        List<String> chosen = form.all("rules");
        ctx.future(() -> control.chooseRules(person, chosen, form.operation().value())
                .thenAccept(taken -> {
                    if (taken) {
                        ctx.redirect(BANK, HttpStatus.SEE_OTHER);
                    } else {
                        html.show(ctx, NOT_TAKEN, pages(ctx).list(Form.ofAddress(ctx), true));
                    }
                }));
    }

    private void show(Context ctx) {
        BankQuestion question = control.getQuestion(ctx.pathParam("question"));
        html.show(ctx, new QuestionPages(pages(ctx), texts).show(question, control.listSettings(question.id())));
    }

    private void set(Context ctx) {
        Form form = Form.of(ctx);
        String question = ctx.pathParam("question");
        long person = views.visitor(ctx).personId();
        Switch which = Switch.find(form.text("switch")).orElseThrow(() -> new NotFound("no such switch"));
        boolean on = form.text("on").equals("yes");
        ctx.future(
                () -> control.set(person, question, which, on, form.operation().value())
                        .thenAccept(taken -> ctx.redirect(BANK + "/" + question, HttpStatus.SEE_OTHER)));
    }

    private BankPages pages(Context ctx) {
        return new BankPages(views.of(ctx), control.listQuestions(), control.ruleSets(), control.switches());
    }
}
