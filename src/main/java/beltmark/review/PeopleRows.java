package beltmark.review;

import beltmark.review.ReviewPage.CriticalRow;
import beltmark.review.ReviewPage.People;
import beltmark.review.ReviewPage.PersonRow;
import beltmark.web.View;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/** The part of the review page about people. */
record PeopleRows(View view, Overview overview) {

    People people() {
        long all = overview.passed().trials();
        int page = overview.scope().page();
        long first = (page - 1L) * Scope.PEOPLE + 1;
        long last = first + overview.standings().size() - 1;
        return new People(
                overview.standings().stream().map(this::person).toList(),
                all > Scope.PEOPLE ? view.text("review.page.which", "first", first, "last", last, "all", all) : "",
                page > 1 ? Addresses.people(overview.scope(), page - 1) : "",
                last < all ? Addresses.people(overview.scope(), page + 1) : "");
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
                standing.critical() == 0 ? "" : Integer.toString(standing.critical()),
                last == null ? "" : last(last),
                last == null ? null : Addresses.sitting(last.sitting()));
    }

    private String last(Standing.Last last) {
        return view.text(
                "review.page.last." + (last.passed() ? "passed" : "not-passed"),
                "day",
                view.words().day(last.finishedAt()),
                "right",
                last.right(),
                "of",
                last.asked());
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

    List<CriticalRow> critical() {
        return overview.critical().stream().map(this::critical).toList();
    }

    private CriticalRow critical(CriticalMiss miss) {
        return new CriticalRow(
                miss.person(),
                miss.crew(),
                new QuestionNames(view.words()).name(miss.question()),
                miss.times(),
                view.words().day(miss.lastAt()),
                Addresses.sitting(miss.lastSitting()));
    }
}
