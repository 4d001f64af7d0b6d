package beltmark.lockout;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.content.QuizContent;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Match;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.units.Graduation;
import beltmark.texts.Texts;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Somebody who sits the quiz in a browser, reads what is on the page and answers right or wrong at will. */
public final class QuizTaker {

    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);
    private static final Papers PAPERS = QuizContent.papers(TEXTS.keys());

    private static final List<Wording> ALL_WORDINGS = TEXTS.languages().stream()
            .map(language -> new Wording(TEXTS.words(language, Graduation.SIXTEENTH_INCH)))
            .toList();

    private QuizTaker() {}

    /** {@return the first question of a new sitting, or the next one of a sitting that waits} */
    public static Reply open(Browser browser) {
        return open(browser, "lockout");
    }

    /** {@return the first question of a new sitting of a paper, or the next one of a sitting that waits} */
    public static Reply open(Browser browser, String paper) {
        Reply quiz = browser.get("/lockout");
        String form = "form:has(input[name=quiz][value=" + paper + "])";
        return quiz.page().select(form).isEmpty()
                ? browser.get(quiz.page().select("main a.button").attr("href"))
                : quiz.send("quiz", paper);
    }

    /** {@return the result of a whole sitting in which these questions were missed} */
    public static Reply sitAll(Browser browser, Set<String> missed) {
        Reply page = open(browser);
        while (isQuestion(page)) {
            Reply feedback = answer(page, !missed.contains(question(page).id()));
            page = browser.get(feedback.page().select("main a.button").attr("href"));
        }
        return page;
    }

    /** {@return the name of the one question that was missed in a whole sitting, the first critical one} */
    public static String sitMissingOneCritical(Browser browser) {
        Reply page = open(browser);
        String missed = "";
        while (isQuestion(page)) {
            Question question = question(page);
            boolean miss = missed.isEmpty() && question.critical();
            missed = miss ? ALL_WORDINGS.get(0).name(question) : missed;
            page = browser.get(
                    answer(page, !miss).page().select("main a.button").attr("href"));
        }
        return missed;
    }

    /** {@return what comes of an answer to the question on the page} */
    public static Reply answer(Reply page, boolean right) {
        return page.send(fields(page.page(), right));
    }

    /** {@return the fields, name and value in turn, that answer the question on a page} */
    public static String[] fields(Document page, boolean right) {
        Question question = question(page);
        return fields(question, right ? question.right() : wrong(question), page);
    }

    /** {@return the question on the page} */
    public static Question question(Reply page) {
        return question(page.page());
    }

    /** {@return the question on the page} */
    public static Question question(Document page) {
        String ask = page.select("fieldset.ask > legend").text();
        return PAPERS.bank().questions().stream()
                .map(BankQuestion::question)
                .filter(question -> isAsked(question, ask))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isAsked(Question question, String ask) {
        return ALL_WORDINGS.stream().anyMatch(wording -> wording.ask(question).equals(ask));
    }

    /** {@return whether the page waits for an answer} */
    public static boolean isQuestion(Reply page) {
        return !page.page().select("fieldset.ask").isEmpty();
    }

    private static List<String> wrong(Question question) {
        List<String> wrong = new ArrayList<>(question.right());
        Collections.reverse(wrong);
        return switch (question.kind()) {
            case PUT_IN_ORDER -> wrong;
            case MATCH -> mismatched(question);
            case CHOICE, SEVERAL_OF, SPOTS ->
                question.options().stream()
                        .filter(option -> !question.right().contains(option))
                        .limit(1)
                        .toList();
        };
    }

    /** The right pairs but for the first row, which gets another target of the first column. */
    private static List<String> mismatched(Question question) {
        List<String> cell = question.getMatch().cells().get(0);
        List<String> pairs = new ArrayList<>(question.right());
        pairs.removeAll(cell);
        cell.stream().filter(pair -> !question.right().contains(pair)).limit(1).forEach(pairs::add);
        return pairs;
    }

    private static String[] fields(Question question, List<String> options, Document page) {
        Wording wording = ALL_WORDINGS.stream()
                .filter(one -> one.ask(question)
                        .equals(page.select("fieldset.ask > legend").text()))
                .findFirst()
                .orElseThrow();
        if (question.kind() == QuestionKind.MATCH) {
            return matchFields(question, options, page, wording);
        }
        List<String> shown = page.select("fieldset.ask > label > span:last-child, fieldset.ask .place label")
                .eachText();
        List<String> fields = new ArrayList<>();
        for (int place = 1; place <= options.size(); place++) {
            int position = shown.indexOf(wording.option(question, options.get(place - 1))) + 1;
            boolean order = question.kind() == QuestionKind.PUT_IN_ORDER;
            fields.add(order ? "place-" + position : "choice");
            fields.add(Integer.toString(order ? place : position));
        }
        return fields.toArray(new String[0]);
    }

    private static String[] matchFields(Question question, List<String> pairs, Document page, Wording wording) {
        List<String> fields = new ArrayList<>();
        for (String pair : pairs) {
            String row = wording.part(question, Match.parts(pair).get(0));
            String target = wording.part(question, Match.parts(pair).get(1));
            for (Element select : page.select("fieldset.match:has(> legend:containsOwn(" + row + ")) select")) {
                select.select("option").stream()
                        .filter(option -> option.text().equals(target))
                        .forEach(option -> {
                            fields.add(select.attr("name"));
                            fields.add(option.attr("value"));
                        });
            }
        }
        return fields.toArray(new String[0]);
    }
}
