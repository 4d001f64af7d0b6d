package beltmark.lockout;

import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Quiz;
import beltmark.core.lockout.QuizResult;
import beltmark.core.lockout.Spot;
import beltmark.drawing.conveyor.ConveyorScene;
import beltmark.drawing.conveyor.Scene;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Makes the pages of the quiz for one visitor. */
record LockoutPages(View view) {

    private static final String PAPER = "lockout.paper.";

    private Wording wording() {
        return new Wording(view.words());
    }

    LockoutPage overview(List<Offer> offers, List<PastResult> past) {
        return new LockoutPage(
                view,
                offers.stream().map(this::paper).toList(),
                past.stream().map(this::pastRow).toList(),
                view.has(Role.COORDINATOR) || view.has(Role.TRAINER));
    }

    private LockoutPage.PaperRow paper(Offer offer) {
        Sitting waiting = offer.waiting();
        Quiz quiz = waiting == null ? offer.example() : waiting.quiz();
        int size = quiz == null ? 0 : quiz.questions().size();
        int next = waiting == null ? 0 : waiting.next().orElse(size);
        return new LockoutPage.PaperRow(
                offer.id(),
                view.text(PAPER + offer.id() + ".name"),
                view.text(PAPER + offer.id() + ".whom"),
                quiz == null ? "" : view.text("lockout.page.lead", "questions", size),
                quiz == null
                        ? view.text("lockout.page.too-few")
                        : view.text(
                                "lockout.page.rule",
                                "questions",
                                size,
                                "needed",
                                quiz.neededToPass(),
                                "percent",
                                quiz.passPercent()),
                waiting == null ? null : new LockoutPage.Waiting(waiting.id(), next),
                view.text("lockout.page.go-on", "next", next, "questions", size),
                OperationId.fresh());
    }

    private LockoutPage.PastRow pastRow(PastResult result) {
        return new LockoutPage.PastRow(
                view.text(PAPER + result.quiz() + ".name"),
                view.words().day(result.finishedAt()),
                view.text("lockout.page.score", "right", result.right(), "of", result.asked()),
                view.text("lockout.page." + (result.passed() ? "passed" : "not-passed")),
                result.passed(),
                address(result.sitting()));
    }

    QuestionPage question(Sitting sitting, int number, AnswerForm form, @Nullable Judgement judgement) {
        Question question = sitting.question(number);
        List<String> shown = sitting.order().optionsOf(question.id());
        return new QuestionPage(
                view,
                address(sitting.id()) + "/" + number,
                number,
                sitting.size(),
                question.kind().id(),
                wording().ask(question),
                question.match() == null ? rows(question, shown, form) : List.of(),
                new MatchRows(wording(), question, form).of(shown),
                new MatchRows(wording(), question, form).headings(),
                scene(question, shown),
                judgement == null
                        ? null
                        : view.text("lockout.question-page.error." + judgement.id(), "items", shown.size()),
                OperationId.fresh());
    }

    private List<QuestionPage.Row> rows(Question question, List<String> shown, AnswerForm form) {
        return IntStream.rangeClosed(1, shown.size())
                .mapToObj(position -> new QuestionPage.Row(
                        position,
                        wording().option(question, shown.get(position - 1)),
                        form.chosen().contains(Integer.toString(position)),
                        form.places().getOrDefault(position, "")))
                .toList();
    }

    private @Nullable Scene scene(Question question, List<String> shown) {
        return question.kind() == QuestionKind.SPOTS
                ? ConveyorScene.of(
                        shown.stream().map(Spot::find).flatMap(Optional::stream).toList(), view.words())
                : null;
    }

    FeedbackPage feedback(Sitting sitting, int number, boolean refused) {
        Question question = sitting.question(number);
        GivenAnswer answer = sitting.findAnswer(question).orElseThrow();
        FeedbackRows rows = new FeedbackRows(view, question, answer);
        return new FeedbackPage(
                view,
                sitting.id(),
                number,
                sitting.size(),
                question.kind().id(),
                answer.judgement() == Judgement.RIGHT,
                question.critical(),
                wording().ask(question),
                rows.of(sitting.order().optionsOf(question.id())),
                scene(question, sitting.order().optionsOf(question.id())),
                wording().why(question),
                wording().basis(question),
                question.source().paragraph(),
                String.join(", ", wording().ruleSets(question)),
                sitting.isFinished(),
                refused ? view.text("lockout.feedback-page.already-answered") : null);
    }

    ResultPage result(Sitting sitting) {
        QuizResult result = QuizResult.of(sitting.quiz(), sitting.judgements());
        List<ResultPage.Row> rows = IntStream.rangeClosed(1, sitting.size())
                .mapToObj(number -> resultRow(sitting, number))
                .toList();
        return new ResultPage(
                view,
                result.passed(),
                view.text(
                        "lockout.result-page.score",
                        "right",
                        result.right(),
                        "of",
                        result.asked(),
                        "needed",
                        result.needed()),
                rows.stream()
                        .filter(row -> row.critical() && !row.status().equals(Judgement.RIGHT.id()))
                        .toList(),
                rows);
    }

    private ResultPage.Row resultRow(Sitting sitting, int number) {
        Question question = sitting.question(number);
        return new ResultPage.Row(
                number,
                wording().name(question),
                sitting.findAnswer(question).orElseThrow().judgement().id(),
                question.critical(),
                address(sitting.id()) + "/" + number);
    }

    private static String address(long sitting) {
        return "/lockout/" + sitting;
    }
}
