package beltmark.lockout;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.content.QuizContent;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Quiz;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Document;

/** Somebody who sits the quiz in a browser, reads what is on the page and answers right or wrong at will. */
public final class QuizTaker {

    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);
    private static final Quiz QUIZ = QuizContent.lockout(TEXTS.keys());
    private static final Wording WORDING = new Wording(TEXTS.words(Language.EN, Graduation.SIXTEENTH_INCH));

    private QuizTaker() {}

    /** {@return the first question of a new sitting, or the next one of a sitting that waits} */
    public static Reply open(Browser browser) {
        Reply quiz = browser.get("/lockout");
        return quiz.page().select("form[action=/lockout]").isEmpty()
                ? browser.get(quiz.page().select("main a.button").attr("href"))
                : quiz.sendTo("/lockout");
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
        String ask = page.select("legend").text();
        return QUIZ.questions().stream()
                .filter(question -> WORDING.ask(question).equals(ask))
                .findFirst()
                .orElseThrow();
    }

    /** {@return whether the page waits for an answer} */
    public static boolean isQuestion(Reply page) {
        return !page.page().select("fieldset.ask").isEmpty();
    }

    private static List<String> wrong(Question question) {
        List<String> wrong = new ArrayList<>(question.right());
        Collections.reverse(wrong);
        return question.kind() == QuestionKind.PUT_IN_ORDER
                ? wrong
                : question.options().stream()
                        .filter(option -> !question.right().contains(option))
                        .limit(1)
                        .toList();
    }

    private static String[] fields(Question question, List<String> options, Document page) {
        List<String> shown = page.select("fieldset.ask label").eachText();
        List<String> fields = new ArrayList<>();
        for (int place = 1; place <= options.size(); place++) {
            int position = shown.indexOf(WORDING.option(question, options.get(place - 1))) + 1;
            boolean order = question.kind() == QuestionKind.PUT_IN_ORDER;
            fields.add(order ? "place-" + position : "choice");
            fields.add(Integer.toString(order ? place : position));
        }
        return fields.toArray(new String[0]);
    }
}
