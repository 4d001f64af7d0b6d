package beltmark.lockout;

import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.Quiz;
import beltmark.core.lockout.QuizResult;
import beltmark.web.OperationId;
import beltmark.web.View;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** Makes the pages of the quiz for one visitor. */
record LockoutPages(View view) {

    private Wording wording() {
        return new Wording(view.words());
    }

    LockoutPage overview(Quiz quiz, Optional<Sitting> open, List<PastResult> past) {
        LockoutPage.Waiting waiting = open.map(sitting ->
                        new LockoutPage.Waiting(sitting.id(), sitting.next().orElse(sitting.size())))
                .orElse(null);
        return new LockoutPage(
                view,
                quiz.questions().size(),
                quiz.neededToPass(),
                quiz.passPercent(),
                waiting,
                past.stream().map(result -> pastRow(quiz, result)).toList(),
                OperationId.fresh());
    }

    private LockoutPage.PastRow pastRow(Quiz quiz, PastResult result) {
        boolean sameVersion = result.quiz().equals(quiz.id()) && result.version() == quiz.version();
        return new LockoutPage.PastRow(
                view.words().day(result.finishedAt()),
                view.text("lockout.page.score", "right", result.right(), "of", result.asked()),
                view.text("lockout.page." + (result.passed() ? "passed" : "not-passed")),
                result.passed(),
                sameVersion ? address(result.sitting()) : null);
    }

    QuestionPage question(Sitting sitting, int number, AnswerForm form, @Nullable Judgement judgement) {
        Question question = sitting.question(number);
        List<String> shown = sitting.order().optionsOf(question.id());
        List<QuestionPage.Row> rows = IntStream.rangeClosed(1, shown.size())
                .mapToObj(position -> new QuestionPage.Row(
                        position,
                        wording().option(question, shown.get(position - 1)),
                        form.chosen().contains(Integer.toString(position)),
                        form.places().getOrDefault(position, "")))
                .toList();
        return new QuestionPage(
                view,
                address(sitting.id()) + "/" + number,
                number,
                sitting.size(),
                question.kind().id(),
                wording().ask(question),
                rows,
                judgement == null
                        ? null
                        : view.text("lockout.question-page.error." + judgement.id(), "items", shown.size()),
                OperationId.fresh());
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
                wording().why(question),
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
                wording().name(question.id()),
                sitting.findAnswer(question).orElseThrow().judgement().id(),
                question.critical(),
                address(sitting.id()) + "/" + number);
    }

    private static String address(long sitting) {
        return "/lockout/" + sitting;
    }
}
