package beltmark.people.first;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

@SuppressWarnings("NullAway.Init")
class FirstAdminJourneyTest {

    private SampleSite site;
    private Browser browser;

    @BeforeEach
    void start() {
        site = SampleSite.startEmpty();
        browser = site.browser();
    }

    @AfterEach
    void stop() {
        site.close();
    }

    private static Reply enter(Reply page, String code) {
        return page.send("code", code, "name", "Noor Haddad", "new-pin", "830617", "again-pin", "830617");
    }

    @Test
    void whoHasTheCodeBecomesAdminAndCanAddTheOthers() {
        Reply signIn = browser.get("/");
        Reply setup = browser.get(signIn.page().select("main .button").attr("href"));
        Reply people = enter(setup, site.setupCode());
        assertEquals("/people", people.path(), people.text());
        assertTrue(people.text().contains("Noor Haddad"), people.text());
        Reply preview = browser.get("/people/import").send("roster", "name,crew\nAna Beltrán,Night crew");
        assertTrue(preview.text().contains("1 person is new"), preview.text());
        assertEquals(
                "/today", site.signIn(site.browser(), "Noor Haddad", "830617").path());
        List<String> records = site.database()
                .read(handle -> handle.createQuery("SELECT kind FROM recordbook_entry")
                        .mapTo(String.class)
                        .list());
        assertEquals(List.of("people.joined"), records);
    }

    @Test
    void theCodeIsTakenHoweverItIsTyped() {
        String sloppy =
                site.setupCode().toLowerCase(Locale.ROOT).replace('-', ' ').replace('0', 'o');
        assertEquals("/people", enter(browser.get("/setup"), sloppy).path());
    }

    @Test
    void theCodeIsGoodForHalfAnHour() {
        site.clock().move(Duration.ofMinutes(30));
        Reply late = enter(browser.get("/setup"), site.setupCode());
        assertEquals(422, late.status());
        assertTrue(late.text().contains("older than 30 minutes"), late.text());
    }

    @Test
    void aWrongCodeAndAWeakPinAreRefused() {
        Reply wrong = enter(browser.get("/setup"), "AAAAA-AAAAA-AAAAA-AAAAA-AAAAA");
        assertEquals(422, wrong.status());
        Reply weak = browser.get("/setup")
                .send("code", site.setupCode(), "name", "Noor Haddad", "new-pin", "123456", "again-pin", "123456");
        assertTrue(weak.text().contains("among the first that anybody would try"), weak.text());
        assertEquals("Noor Haddad", weak.page().select("[name=name]").val());
    }

    @Test
    void thePageIsGoneOnceSomebodyIsThere() {
        Reply open = browser.get("/setup");
        String code = site.setupCode();
        enter(open, code);
        assertEquals("", site.setupCode());
        assertEquals(404, site.browser().get("/setup").status());
        Reply forged = site.browser().get("/sign-in/1/1").sendElsewhere("/setup", "code", code, "name", "Eve");
        assertEquals(404, forged.status());
    }

    @Test
    void codesAreTriedTenTimesAMinuteAtMost() {
        Reply page = browser.get("/setup");
        for (int i = 0; i < 10; i++) {
            assertEquals(422, enter(page, "X").status());
        }
        assertEquals(429, enter(page, site.setupCode()).status());
        site.clock().move(Duration.ofMinutes(1));
        assertEquals("/people", enter(page, site.setupCode()).path());
    }
}
