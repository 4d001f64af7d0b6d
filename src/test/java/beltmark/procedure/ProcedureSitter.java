package beltmark.procedure;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.lockout.QuizTaker;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Element;

/** Sits the paper for authorized employees, and knows the procedure of the test by heart. */
final class ProcedureSitter {

    private static final List<String> STEPS =
            List.of("Tell the affected", "Stop the belt", "Open the disconnect", "Lock it");
    private static final Map<String, String> PROOFS =
            Map.of("Head disconnect", "start tried", "Air valve", "gauge at zero");

    private ProcedureSitter() {}

    /** {@return every question that was asked} */
    static List<String> sit(Browser browser) {
        List<String> asked = new ArrayList<>();
        Reply page = QuizTaker.open(browser);
        while (QuizTaker.isQuestion(page)) {
            String ask = page.page().select("fieldset.ask > legend").text();
            asked.add(ask);
            Reply feedback = ask.contains("Mistral north") ? page.send(fields(page)) : QuizTaker.answer(page, true);
            page = browser.get(feedback.page().select("main a.button").attr("href"));
        }
        return asked;
    }

    private static String[] fields(Reply page) {
        List<String> fields = new ArrayList<>();
        for (Element row : page.page().select("fieldset.match")) {
            String proof = PROOFS.getOrDefault(row.select("legend").text(), "");
            fields.add(row.select("select").attr("name"));
            fields.add(row.select("option:containsOwn(" + proof + ")").attr("value"));
        }
        for (Element place : page.page().select("div.place:not(fieldset.match div)")) {
            fields.add(place.select("select").attr("name"));
            fields.add(Integer.toString(STEPS.indexOf(place.select("label").text()) + 1));
        }
        for (Element choice : page.page().select("label.choice")) {
            if (PROOFS.containsKey(choice.text())) {
                fields.add("choice");
                fields.add(choice.select("input").attr("value"));
            }
        }
        return fields.toArray(new String[0]);
    }
}
