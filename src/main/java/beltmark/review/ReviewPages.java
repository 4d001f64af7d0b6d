package beltmark.review;

import beltmark.core.lockout.Quiz;
import beltmark.core.statistics.Proportion;
import beltmark.review.ReviewPage.CriticalRow;
import beltmark.review.ReviewPage.PersonRow;
import beltmark.review.ReviewPage.QuestionRow;
import beltmark.web.View;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;

/** Makes the review page. */
record ReviewPages(View view, Quiz quiz, Overview overview) {

    private static final Comparator<QuestionCount> MOST_MISSED_FIRST = Comparator.comparingDouble(
                    (QuestionCount count) -> -count.missed().share().orElse(0.0))
            .thenComparing(QuestionCount::question);

    ReviewPage page() {
        List<PersonRow> people = overview.standings().stream().map(this::person).toList();
        return new ReviewPage(
                view,
                overview.scope().crew(),
                overview.crews().stream()
                        .map(crew -> new ReviewPage.CrewRow(
                                crew.id(),
                                crew.name(),
                                crew.id() == overview.scope().crew()))
                        .toList(),
                view.text(
                        "review.page.summary",
                        "passed",
                        overview.standings().stream()
                                .filter(standing -> standing.passedAt() != null)
                                .count(),
                        "people",
                        people.size()),
                people,
                overview.counts().stream()
                        .sorted(MOST_MISSED_FIRST)
                        .map(this::question)
                        .toList(),
                overview.critical().stream().map(this::critical).toList());
    }

    private PersonRow person(Standing standing) {
        Standing.Last last = standing.last();
        Instant passedAt = standing.passedAt();
        String kind = kind(standing);
        return new PersonRow(
                standing.person(),
                standing.crew(),
                kind,
                view.text("review.status." + kind),
                passedAt == null ? "" : view.words().day(passedAt),
                passedAt == null ? "" : view.text("review.page.age", "days", days(passedAt)),
                last == null
                        ? ""
                        : view.text(
                                "review.page.last." + (last.passed() ? "passed" : "not-passed"),
                                "day",
                                view.words().day(last.finishedAt()),
                                "right",
                                last.right(),
                                "of",
                                last.asked()),
                last == null ? null : address(last.sitting()));
    }

    private static String kind(Standing standing) {
        if (standing.passedAt() != null) {
            return "passed";
        }
        if (standing.last() != null) {
            return "not-passed";
        }
        return standing.isOpen() ? "open" : "not-taken";
    }

    /** Whole days between the dates at the site, as people count them. */
    private long days(Instant then) {
        return ChronoUnit.DAYS.between(
                LocalDate.ofInstant(then, view.words().zone()),
                LocalDate.ofInstant(overview.now(), view.words().zone()));
    }

    private QuestionRow question(QuestionCount count) {
        Proportion missed = count.missed();
        List<MissCount> misses = overview.misses().stream()
                .filter(miss -> miss.question().equals(count.question()))
                .toList();
        return new QuestionRow(
                name(count.question()),
                quiz.question(count.question()).critical(),
                view.text("review.page.of", "missed", missed.hits(), "asked", missed.trials()),
                interval(missed),
                misses.isEmpty() ? "" : belief(misses.get(0)),
                misses.isEmpty()
                        ? ""
                        : view.text("review.page.times", "times", misses.get(0).times()));
    }

    private String interval(Proportion missed) {
        if (!missed.isLargeEnough()) {
            return view.text("review.page.too-few", "least", Proportion.SMALLEST_GROUP);
        }
        return missed.wilson95()
                .map(interval -> view.text(
                        "review.page.interval", "low", percent(interval.low()), "high", percent(interval.high())))
                .orElse("");
    }

    private static long percent(double share) {
        return Math.round(100 * share);
    }

    private String belief(MissCount miss) {
        String option = view.words().say("lockout.question." + miss.question() + ".option." + miss.option());
        return view.text("review.miss." + miss.kind(), "option", option);
    }

    private CriticalRow critical(CriticalMiss miss) {
        return new CriticalRow(
                miss.person(),
                miss.crew(),
                name(miss.question()),
                miss.times(),
                view.words().day(miss.lastAt()),
                address(miss.lastSitting()));
    }

    /** A question of an earlier version may have no name any more. */
    private String name(String question) {
        return new QuestionNames(view.words()).name(question);
    }

    private static String address(long sitting) {
        return "/review/sittings/" + sitting;
    }
}
