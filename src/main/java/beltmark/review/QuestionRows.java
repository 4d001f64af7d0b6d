package beltmark.review;

import beltmark.core.lockout.Question;
import beltmark.core.lockout.Quiz;
import beltmark.core.statistics.Bounds;
import beltmark.core.statistics.ItemFlag;
import beltmark.review.ReviewPage.Plot;
import beltmark.review.ReviewPage.QuestionRow;
import beltmark.review.first.FirstAttempts.MissCount;
import beltmark.review.first.Plots;
import beltmark.review.first.QuestionFindings;
import beltmark.web.View;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The part of the review page about questions. */
record QuestionRows(View view, Quiz quiz, List<QuestionFindings> findings) {

    List<QuestionRow> rows() {
        Set<String> critical = quiz.questions().stream()
                .filter(Question::critical)
                .map(Question::id)
                .collect(Collectors.toSet());
        return IntStream.range(0, findings.size())
                .mapToObj(i -> row(i + 1, findings.get(i), critical))
                .toList();
    }

    private QuestionRow row(int number, QuestionFindings question, Set<String> critical) {
        Shares shares = new Shares(view);
        return new QuestionRow(
                number,
                new QuestionNames(view.words()).name(question.question()),
                critical.contains(question.question()),
                shares.count(question.right()),
                shares.interval(question.right(), question.told()),
                question.mostMissed().map(this::belief).orElse(""),
                correlation(question),
                question.flags().stream()
                        .sorted()
                        .map(flag -> view.text("review.flag." + flag.id()))
                        .toList());
    }

    private String belief(MissCount miss) {
        String option = new QuestionNames(view.words()).option(miss.question(), miss.option());
        return view.text(
                "review.page.belief-times",
                "belief",
                view.text("review.miss." + miss.kind(), "option", option),
                "times",
                miss.people());
    }

    private String correlation(QuestionFindings question) {
        if (!question.hasCorrelation()) {
            return question.right().trials() < ItemFlag.SMALLEST_FOR_CORRELATION
                    ? view.text("review.page.too-few", "least", ItemFlag.SMALLEST_FOR_CORRELATION)
                    : view.text("review.page.held-back");
        }
        Double r = question.correctedR().value();
        if (r == null) {
            return new Shares(view).notComputable(question.correctedR());
        }
        Bounds interval = question.correlationInterval().orElseThrow();
        return view.text(
                "review.page.figure-with-interval", "value", r, "low", interval.low(), "high", interval.high());
    }

    Plot plot() {
        Plots plots = new Plots(view.words());
        return new Plot(plots.questions(findings), Plots.viewBox(Plots.questionsHeight(findings)));
    }
}
