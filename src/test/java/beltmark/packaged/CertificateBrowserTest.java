package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.SampleSite;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A coordinator issues and revokes a certificate in the browser, and somebody without sign-in looks it up. */
@NeedsChromium
class CertificateBrowserTest {

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.ON, "certificate");
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @Test
    void aCertificateIsIssuedLookedUpAndRevoked() {
        new Trainee(chrome).signIn("Site office", SampleSite.COORDINATOR);
        chrome.go("/certificate");
        chrome.press(SampleSite.OTHER_NEW_HIRE);
        chrome.pressOn("form[action^='/certificate/of/'] button");
        String serial = chrome.find(".issued .code").getText();
        chrome.go("/verify/" + serial);
        assertTrue(chrome.text().contains("Valid"), chrome::text);
        chrome.go("/certificate");
        chrome.press(SampleSite.OTHER_NEW_HIRE);
        chrome.pressInPlace("summary");
        chrome.fill("reason", "The wrong rig was shown");
        chrome.pressOn("form[action$=revoke] button");
        assertTrue(chrome.text().contains("Revoked: The wrong rig was shown"), chrome::text);
        chrome.forgetWhoIsSignedIn();
        chrome.go("/verify/" + serial);
        assertTrue(chrome.text().contains("The site has taken it back."), chrome::text);
    }
}
