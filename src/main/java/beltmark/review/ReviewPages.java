package beltmark.review;

import beltmark.core.lockout.Quiz;
import beltmark.review.ReviewPage.Choice;
import beltmark.review.ReviewPage.Filter;
import beltmark.review.first.Findings;
import beltmark.web.View;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;

/** Makes the review page. */
record ReviewPages(View view, List<String> papers, Quiz quiz, Overview overview) {

    ReviewPage page() {
        Findings findings = new Findings(overview.attempts(), quiz);
        PeopleRows people = new PeopleRows(view, overview);
        TestRows test = new TestRows(view, overview.attempts().passed(), findings.test());
        QuestionRows questions = new QuestionRows(view, quiz, findings.questions());
        return new ReviewPage(
                view,
                filter(),
                view.text(
                        "review.page.summary",
                        "passed",
                        overview.passed().hits(),
                        "people",
                        overview.passed().trials()),
                people.people(),
                people.critical(),
                test.facts(),
                test.scores(),
                questions.rows(),
                questions.plot());
    }

    private Filter filter() {
        Scope scope = overview.scope();
        List<Choice> crews = new ArrayList<>();
        crews.add(new Choice("0", view.text("review.page.all-crews"), scope.crew() == Scope.ALL_CREWS));
        overview.crews()
                .forEach(crew ->
                        crews.add(new Choice(Long.toString(crew.id()), crew.name(), crew.id() == scope.crew())));
        return new Filter(
                Addresses.export(scope),
                papers.stream()
                        .map(paper -> new Choice(
                                paper, view.text("lockout.paper." + paper + ".name"), paper.equals(scope.quiz())))
                        .toList(),
                crews,
                months("review.page.earliest", scope.period().from()),
                months("review.page.latest", scope.period().to()));
    }

    /** The months that can be chosen, before them none at all. */
    private List<Choice> months(String open, String chosen) {
        DateTimeFormatter format =
                DateTimeFormatter.ofPattern("LLLL yyyy", view.words().language().locale());
        List<Choice> months = new ArrayList<>();
        months.add(new Choice("", view.text(open), chosen.isEmpty()));
        if (!chosen.isEmpty() && !overview.months().contains(chosen)) {
            months.add(new Choice(chosen, format.format(YearMonth.parse(chosen)), true));
        }
        overview.months()
                .forEach(month ->
                        months.add(new Choice(month, format.format(YearMonth.parse(month)), month.equals(chosen))));
        return months;
    }
}
