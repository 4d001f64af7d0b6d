package beltmark.packaged;

import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.solution.Slip;
import beltmark.core.units.Graduation;
import beltmark.core.units.LengthPrinter;
import beltmark.lockout.QuizTaker;
import java.util.List;
import org.jsoup.Jsoup;

/** Somebody of the demo crew at the browser, whose lengths are in sixteenths, and who knows the answers from the core. */
record Trainee(Chrome chrome) {

    /** Comes to the site and signs in as a crew does: crew, name, PIN. */
    void signIn(String crew, String name) {
        chrome.go("/");
        chrome.press(crew);
        chrome.press(name);
        chrome.fill("pin", SampleSite.pin());
        chrome.press(Sample.says("people.pin.button"));
    }

    /** Opens a problem by its code, from the start page. */
    Problem open(String family, String code) {
        chrome.go("/today");
        chrome.pressOn("main a[href='/practice/" + family + "']");
        chrome.fill("code", code);
        chrome.press(Sample.says("practice.open"));
        return Sample.family(family).problem(new ProblemCode(code));
    }

    /** {@return the slip made on the left side of the only part of a drill; the other side is answered rightly} */
    Slip makeASlip(Problem drill) {
        List<Blank> blanks = drill.parts().get(0).blanks();
        Slip slip = ((LengthBlank) blanks.get(0)).slips().get(0);
        chrome.fill(blanks.get(0).id(), told(new Answer.OfLength(slip.value())));
        fillRightly(blanks.get(1));
        check();
        return slip;
    }

    /** Answers a whole problem rightly. */
    void answerRightly(Problem problem) {
        problem.parts().forEach(this::answerRightly);
    }

    /** Opens the lockout quiz and answers its questions rightly, this many or until the result. */
    void answerQuizQuestions(int most) {
        chrome.go("/lockout");
        chrome.pressOn("main form button");
        for (int i = 0; i < most && chrome.has("fieldset.ask"); i++) {
            chrome.fillAll(QuizTaker.fields(Jsoup.parse(chrome.source()), true));
            chrome.pressOn("main form button");
            chrome.pressOn("main a.button");
        }
    }

    /** Answers a part rightly. */
    void answerRightly(Part part) {
        part.blanks().forEach(this::fillRightly);
        check();
    }

    /** Fills in the right answer of a blank, without sending it. */
    void fillRightly(Blank blank) {
        chrome.fill(blank.id(), told(blank.right()));
    }

    /** Sends the answers of the open part. */
    void check() {
        chrome.pressOn("#now form:first-of-type button");
    }

    /** {@return an answer as this person types it} */
    static String told(Answer answer) {
        return answer instanceof Answer.OfLength length
                ? LengthPrinter.print(length.length(), Graduation.SIXTEENTH_INCH)
                : ((Answer.OfChoice) answer).option();
    }
}
