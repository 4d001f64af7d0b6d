package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.problem.ProblemCode;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** Somebody who uses nothing but the keyboard; the focus must be seen at every step. */
@NeedsChromium
class KeyboardBrowserTest {

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.ON, "keyboard");
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @Test
    void aProblemIsReachedAndAnsweredFromSignInOn() {
        chrome.go("/");
        follow(".ways li:first-child a");
        follow(".ways li:first-child a");
        enter(SampleSite.pin());
        follow("main a[href='/practice/spring-length']");
        chrome.tabTo("[name=code]");
        enter("N1");
        chrome.tabTo("[name=both]");
        enter(Trainee.told(Sample.family("spring-length")
                .problem(new ProblemCode("N1"))
                .parts()
                .get(0)
                .blanks()
                .get(0)
                .right()));
        assertTrue(chrome.text().contains(Sample.says("practice.done-clean")), chrome::text);
    }

    private static void follow(String selector) {
        chrome.tabTo(selector);
        enter("");
    }

    private static void enter(String typed) {
        chrome.arriveAfter(() -> chrome.type(typed, Keys.ENTER));
    }
}
