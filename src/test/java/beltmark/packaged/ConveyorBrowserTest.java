package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.SampleSite;
import beltmark.lockout.QuizTaker;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** The drawn conveyor under fingers and keys, with scripts off. */
@NeedsChromium
class ConveyorBrowserTest {

    private static final int MOST_SITTINGS = 12;

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.OFF, "conveyor");
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @BeforeEach
    void leave() {
        chrome.forgetWhoIsSignedIn();
    }

    @Test
    void everySpotCanBeTappedOnTheDrawingAndByTheKeyboard() {
        new Trainee(chrome).signIn("Pier crew", SampleSite.NEW_HIRE);
        goToADrawing();
        List<String> right = rightBoxes();

        chrome.pressInPlace(label(right.get(0)));
        assertTrue(isTicked(right.get(0)), "a tap ticks");
        chrome.pressInPlace(label(right.get(0)));
        assertFalse(isTicked(right.get(0)), "a second tap takes it back");

        chrome.find("#choice-" + right.get(0)).sendKeys(Keys.SPACE);
        assertTrue(isTicked(right.get(0)), "the space key ticks");
        right.subList(1, right.size()).forEach(box -> chrome.pressInPlace(label(box)));
        chrome.pressOn("main form button");

        assertTrue(chrome.has(".verdict .status-right"), chrome::text);
        assertTrue(chrome.has("svg span.spot"), "the drawing stays beside the answer");
    }

    @Test
    void theCoordinatorReadsTheBankOnAPhone() {
        new Trainee(chrome).signIn("Site office", SampleSite.COORDINATOR);
        chrome.go("/lockout/bank?kind=spots");
        chrome.pressOn("tbody th a");
        assertTrue(chrome.has("section[lang=es]"), chrome::text);
    }

    private static void goToADrawing() {
        for (int sitting = 0; sitting < MOST_SITTINGS; sitting++) {
            chrome.go("/lockout");
            chrome.pressOn("main form button");
            while (chrome.has("fieldset.ask")) {
                if (chrome.has("label.spot")) {
                    return;
                }
                chrome.fillAll(QuizTaker.fields(Jsoup.parse(chrome.source()), true));
                chrome.pressOn("main form button");
                chrome.pressOn("main a.button");
            }
        }
        throw new AssertionError("no paper had a drawing");
    }

    private static List<String> rightBoxes() {
        String[] fields = QuizTaker.fields(Jsoup.parse(chrome.source()), true);
        List<String> boxes = new ArrayList<>();
        for (int i = 0; i < fields.length; i += 2) {
            assertEquals("choice", fields[i]);
            boxes.add(fields[i + 1]);
        }
        return boxes;
    }

    private static String label(String box) {
        return "svg label[for=choice-" + box + "]";
    }

    private static boolean isTicked(String box) {
        return chrome.find("#choice-" + box).isSelected();
    }
}
