package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sign-off at a conveyor without network: kept as a draft, without a PIN, and signed when the network is back. */
@NeedsChromium
class DraftBrowserTest {

    private static final String BUTTON = "form[data-outbox=draft] > button";

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Relay network;
    private static Chrome chrome;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        network = Relay.to(site.port());
        chrome = Chrome.start(folder, network.address(), Chrome.Scripts.ON, "draft");
        chrome.expectNetworkFaults();
        new Trainee(chrome).signIn("Pier crew", SampleSite.SUPERVISOR);
    }

    @AfterAll
    static void stop() {
        chrome.close();
        network.close();
        site.close();
    }

    @Test
    void whatWasEnteredInTheFieldIsSignedWhenTheNetworkIsBack() {
        chrome.go("/sign-off");
        chrome.press(SampleSite.NEW_HIRE);
        chrome.pressOn("a[href$='" + SampleDemonstration.RIG + "']");
        String form = chrome.path();
        chrome.find("#outbox[data-ahead='fetched']");
        network.cut();
        chrome.fillAll(SampleDemonstration.within());
        chrome.pressInPlace(BUTTON);
        chrome.waitFor("Everything you entered is kept on this device");
        assertTrue(chrome.text().contains(Sample.says("outbox.draft", "count", 1)), chrome::text);

        chrome.go(form);
        chrome.waitFor(Sample.says("outbox.restored"));
        assertEquals("28 3/8", chrome.find("[name=mount-mark-left]").getDomProperty("value"));

        network.mend();
        chrome.pressOn(BUTTON);
        assertTrue(chrome.has("[name=pin]"), chrome::text);
        network.cut();
        chrome.fill("pin", SampleSite.pin());
        chrome.pressInPlace(".signature form button");
        chrome.waitFor(Sample.says("outbox.not-sent"));
        network.mend();
        chrome.pressOn(".signature form button");
        assertTrue(chrome.text().contains("Stored as record"), chrome::text);
        assertTrue(chrome.text().contains(Sample.says("signoff.entered-at")), chrome::text);
        chrome.go("/today");
        assertFalse(chrome.text().contains("not yet signed"), chrome::text);
    }
}
