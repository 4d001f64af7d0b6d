package beltmark.review;

import beltmark.core.statistics.Bounds;
import beltmark.core.statistics.DecisionConsistency;
import beltmark.core.statistics.ItemFlag;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Scores;
import beltmark.review.ReviewPage.Fact;
import beltmark.review.ReviewPage.Plot;
import beltmark.review.ReviewPage.ScorePlot;
import beltmark.review.ReviewPage.ScoreRow;
import beltmark.review.first.Plots;
import beltmark.review.first.TestFindings;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The part of the review page about the quiz as a measurement. */
record TestRows(View view, Proportion passed, Optional<TestFindings> findings) {

    private static final int PERCENT = 100;

    List<Fact> facts() {
        if (passed.trials() == 0) {
            return List.of();
        }
        List<Fact> facts = new ArrayList<>();
        facts.add(fact("passed", new Shares(view).withInterval(passed, findings.isPresent())));
        findings.ifPresent(test -> {
            facts.add(fact("mean", mean(test.scores())));
            facts.add(fact(test.sameQuestions() ? "alpha" : "kr21", from30(test, this::consistency)));
            facts.add(fact("error", from30(test, this::error)));
            facts.add(fact("twice", from30(test, this::twice)));
        });
        return facts;
    }

    private Fact fact(String name, String value) {
        return new Fact(view.text("review.test." + name), value);
    }

    private String mean(Scores scores) {
        return view.text(
                "review.test.mean-value",
                "mean",
                scores.mean().toOptional().orElseThrow(),
                "of",
                scores.items(),
                "deviation",
                scores.sampleDeviation().toOptional().orElse(0));
    }

    private String from30(TestFindings test, Function<TestFindings, String> value) {
        return test.isLargeEnough()
                ? value.apply(test)
                : view.text(
                        "review.page.too-few-of",
                        "least",
                        ItemFlag.SMALLEST_FOR_CORRELATION,
                        "people",
                        test.scores().people());
    }

    private String consistency(TestFindings test) {
        Double value = test.consistency().value();
        if (value == null) {
            return notComputable(test.consistency());
        }
        Optional<Bounds> interval = test.interval();
        return interval.isEmpty()
                ? view.text("review.page.figure", "value", value)
                : view.text(
                        "review.page.figure-with-interval",
                        "value",
                        value,
                        "low",
                        interval.get().low(),
                        "high",
                        interval.get().high());
    }

    private String error(TestFindings test) {
        Double value = test.standardError().value();
        return value == null
                ? notComputable(test.standardError())
                : view.text("review.test.error-value", "value", value);
    }

    private String twice(TestFindings test) {
        DecisionConsistency twice = test.twice();
        Double agreement = twice.agreement().value();
        Double kappa = twice.kappa().value();
        if (agreement == null || kappa == null) {
            return notComputable(agreement == null ? twice.agreement() : twice.kappa());
        }
        return view.text("review.test.twice-value", "percent", Math.round(PERCENT * agreement), "kappa", kappa);
    }

    private String notComputable(Measure measure) {
        return new Shares(view).notComputable(measure);
    }

    @Nullable
    ScorePlot scores() {
        return findings.map(test -> new ScorePlot(
                        new Plot(
                                new Plots(view.words()).scores(test.scores(), test.needed()),
                                Plots.viewBox(Plots.SCORES_HEIGHT)),
                        IntStream.rangeClosed(0, test.scores().items())
                                .filter(score -> test.scores().at(score) > 0)
                                .mapToObj(score ->
                                        new ScoreRow(score, test.scores().at(score)))
                                .toList()))
                .orElse(null);
    }
}
