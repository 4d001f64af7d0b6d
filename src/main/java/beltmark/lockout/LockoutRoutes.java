package beltmark.lockout;

import beltmark.core.lockout.Answer;
import beltmark.core.lockout.Judge;
import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Question;
import beltmark.web.Form;
import beltmark.web.Html;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.Views;
import beltmark.web.Visitor;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.router.JavalinDefaultRoutingApi;

/** The addresses of the lockout quiz. */
public final class LockoutRoutes {

    private static final String ALL = "/lockout";
    private static final String SITTING = "sitting";
    private static final String NUMBER = "number";
    private static final int NOT_ANSWERED = 422;
    private static final int ALREADY_ANSWERED = 409;

    private final Lockout lockout;
    private final Views views;
    private final Html html;

    /**
     * @param lockout what people do with the quiz
     * @param views what pages share
     * @param html how they are rendered
     */
    public LockoutRoutes(Lockout lockout, Views views, Html html) {
        this.lockout = lockout;
        this.views = views;
        this.html = html;
    }

    /** Adds the routes. */
    public void register(JavalinDefaultRoutingApi routes) {
        routes.get(ALL, this::overview, Role.SIGNED_IN);
        routes.post(ALL, this::open, Role.SIGNED_IN);
        routes.get("/lockout/{sitting}", this::goOn, Role.SIGNED_IN);
        routes.get("/lockout/{sitting}/{number}", this::question, Role.SIGNED_IN);
        routes.post("/lockout/{sitting}/{number}", this::answer, Role.SIGNED_IN);
    }

    private void overview(Context ctx) {
        long person = views.visitor(ctx).personId();
        html.show(ctx, pages(ctx).overview(lockout.listOffers(person), lockout.listResults(person)));
    }

    private void open(Context ctx) {
        OperationId operation = Form.of(ctx).operation();
        Sitter sitter = Sitter.of(views.visitor(ctx));
        String quiz = Form.of(ctx).text("quiz");
        ctx.future(() -> lockout.open(sitter, quiz, operation.value())
                .thenAccept(sitting -> ctx.redirect(
                        ALL + (sitting.isPresent() ? "/" + sitting.getAsLong() : ""), HttpStatus.SEE_OTHER)));
    }

    private void goOn(Context ctx) {
        Sitting sitting = getSitting(ctx);
        sitting.next()
                .ifPresentOrElse(
                        next -> ctx.redirect(ALL + "/" + sitting.id() + "/" + next, HttpStatus.SEE_OTHER),
                        () -> html.show(ctx, pages(ctx).result(sitting)));
    }

    private void question(Context ctx) {
        Sitting sitting = getSitting(ctx);
        int number = number(ctx, sitting);
        if (sitting.findAnswer(sitting.question(number)).isPresent()) {
            html.show(ctx, pages(ctx).feedback(sitting, number, false));
        } else if (sitting.next().orElseThrow() == number) {
            html.show(ctx, pages(ctx).question(sitting, number, AnswerForm.EMPTY, null));
        } else {
            ctx.redirect(ALL + "/" + sitting.id(), HttpStatus.SEE_OTHER);
        }
    }

    private void answer(Context ctx) {
        Visitor visitor = views.visitor(ctx);
        Sitting sitting = getSitting(ctx);
        int number = number(ctx, sitting);
        Question question = sitting.question(number);
        AnswerForm form = AnswerForm.read(Form.of(ctx), question);
        Answer answer = form.toAnswer(question, sitting.order().optionsOf(question.id()));
        String operation = Form.of(ctx).operation().value();
        Wording wording = new Wording(views.of(ctx).words());
        ctx.future(() -> lockout.answer(Sitter.of(visitor), sitting.id(), number, answer, wording, operation)
                .thenAccept(taken -> {
                    switch (taken) {
                        case RECORDED, REPEATED -> ctx.redirect(ctx.path(), HttpStatus.SEE_OTHER);
                        case NOT_ITS_TURN -> ctx.redirect(ALL + "/" + sitting.id(), HttpStatus.SEE_OTHER);
                        case ALREADY_ANSWERED ->
                            html.show(ctx, ALREADY_ANSWERED, pages(ctx).feedback(getSitting(ctx), number, true));
                        case NOT_ANSWERED -> {
                            Judgement why = Judge.judge(question, answer);
                            html.show(ctx, NOT_ANSWERED, pages(ctx).question(sitting, number, form, why));
                        }
                    }
                }));
    }

    private Sitting getSitting(Context ctx) {
        long sitting = Form.pathNumber(ctx, SITTING);
        return lockout.findSitting(views.visitor(ctx).personId(), sitting)
                .orElseThrow(() -> new NotFound("sitting " + sitting));
    }

    private static int number(Context ctx, Sitting sitting) {
        long number = Form.pathNumber(ctx, NUMBER);
        sitting.question(number);
        return (int) number;
    }

    private LockoutPages pages(Context ctx) {
        return new LockoutPages(views.of(ctx));
    }
}
