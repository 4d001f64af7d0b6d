package beltmark.certificate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The demo's past year has people who are cleared; the site's clock stands on 5 March 2026. */
@SuppressWarnings("NullAway.Init")
class CertificateJourneyTest {

    private static final int DOTS_PER_INCH = 300;
    private static final String ISSUE = "form[action^=/certificate/of/]";

    private static SampleSite site;

    private Browser coordinator;
    private String holder = "";

    @BeforeAll
    static void start() {
        site = SampleSite.startWithPastYear();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @BeforeEach
    void findSomebodyWhoIsCleared() {
        // what was looked up in the test before no longer counts
        site.clock().move(Duration.ofMinutes(1));
        coordinator = site.signIn(SampleSite.COORDINATOR);
        holder = listCleared().get(0);
    }

    private List<String> listCleared() {
        return coordinator.get("/certificate").page().select("main a[href^=/certificate/of/]").eachAttr("href").stream()
                .filter(path -> !coordinator.get(path).page().select(ISSUE).isEmpty())
                .toList();
    }

    private Reply issue() {
        Reply page = coordinator.get(holder);
        return page.sendTo(page.page().select(ISSUE).attr("action"));
    }

    private static String serial(Reply page) {
        return page.page().select(".issued .code").eachText().get(0);
    }

    private static Reply lookUp(String printed) {
        return site.browser().get("/verify/" + printed);
    }

    private static String worth(Reply page) {
        return page.page().select("h2.worth").text();
    }

    @Test
    void aCertificateIsIssuedAndAnybodyCanLookItUp() {
        Reply issued = issue();
        assertEquals(200, issued.status(), issued.text());
        Reply found = lookUp(serial(issued));
        assertEquals("Valid", worth(found));
        String name = issued.page().select("h1").text().replace("Certificates: ", "");
        assertTrue(found.text().contains(name), found.text());
        assertTrue(found.text().contains("claims no accreditation"), found.text());
        assertTrue(found.text().contains("Nothing here gives anybody leave to start work."), found.text());
    }

    @Test
    void theSheetSaysItAllAndItsCodeLeadsBack() throws Exception {
        String serial = serial(issue());
        try (PDDocument sheet = pdf("/certificate/" + serial + "/sheet.pdf?paper=a4")) {
            String text = text(sheet);
            assertTrue(text.contains("In-house qualification"), text);
            assertTrue(text.contains(serial), text);
            assertTrue(text.contains("claims no accreditation"), text);
            assertTrue(text.contains("leave to start work"), text);
            assertEquals(1, sheet.getNumberOfPages());
            assertLeadsBack(scan(sheet, 0));
        }
    }

    @Test
    void theCardHasAFrontAndABackWithTheCode() throws Exception {
        String serial = serial(issue());
        try (PDDocument card = pdf("/certificate/" + serial + "/card.pdf")) {
            assertEquals(2, card.getNumberOfPages());
            assertEquals(85.6, card.getPage(0).getMediaBox().getWidth() * 25.4 / 72, 0.1);
            String text = text(card);
            assertTrue(text.contains(serial), text);
            assertTrue(text.contains("No leave to start work."), text);
            assertLeadsBack(scan(card, 1));
        }
    }

    private void assertLeadsBack(String scanned) {
        String address = "http://127.0.0.1:" + site.port();
        assertTrue(scanned.startsWith(address + "/verify/B1."), scanned);
        assertEquals("Valid", worth(site.browser().get(scanned.substring(address.length()))));
    }

    @Test
    void theSheetIsInTheLanguageOfTheReader() throws Exception {
        String serial = serial(issue());
        coordinator.get("/settings").send("language", "es");
        try (PDDocument sheet = pdf("/certificate/" + serial + "/sheet.pdf")) {
            String text = text(sheet);
            assertTrue(text.contains("Habilitación interna"), text);
            assertEquals("es", sheet.getDocumentCatalog().getLanguage());
        } finally {
            coordinator.get("/settings").send("language", "en");
        }
    }

    private PDDocument pdf(String path) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + site.port() + path))
                .header("Cookie", "s=" + coordinator.cookies().get("s"))
                .build();
        HttpResponse<byte[]> reply = HttpClient.newHttpClient().send(request, BodyHandlers.ofByteArray());
        assertEquals(
                "application/pdf", reply.headers().firstValue("Content-Type").orElse(""));
        return Loader.loadPDF(reply.body());
    }

    private static String text(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }

    private static String scan(PDDocument document, int page) throws IOException, ReaderException {
        BufferedImage image = new PDFRenderer(document).renderImageWithDPI(page, DOTS_PER_INCH);
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        LuminanceSource source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
        return new QRCodeReader()
                .decode(new BinaryBitmap(new HybridBinarizer(source)), Map.of(DecodeHintType.TRY_HARDER, true))
                .getText();
    }

    @Test
    void aRevokedOneSaysSoAndKeepsItsReasonToTheSite() {
        Reply page = issue();
        String serial = serial(page);
        Reply without = page.sendTo("/certificate/" + serial + "/revoke", "reason", "");
        assertEquals(422, without.status());
        Reply revoked = page.sendTo("/certificate/" + serial + "/revoke", "reason", "Wrong rig was shown");
        assertTrue(revoked.text().contains("Revoked: Wrong rig was shown"), revoked.text());
        Reply found = lookUp(serial);
        assertEquals("Revoked", worth(found));
        assertFalse(found.text().contains("Wrong rig"), found.text());
        assertEquals("certificate.revoked", lastRecord());
    }

    private static String lastRecord() {
        return site.database()
                .read(handle -> handle.createQuery("SELECT kind FROM recordbook_entry ORDER BY seq DESC LIMIT 1")
                        .mapTo(String.class)
                        .one());
    }

    @Test
    void aLaterOneTakesThePlaceOfTheEarlier() {
        String first = serial(issue());
        String second = serial(issue());
        assertNotEquals(first, second);
        assertEquals("Replaced", worth(lookUp(first)));
        assertEquals("Valid", worth(lookUp(second)));
    }

    @Test
    void theSameFormSentTwiceIssuesOne() {
        Reply page = coordinator.get(holder);
        String action = page.page().select(ISSUE).attr("action");
        Reply once = page.sendTo(action);
        Reply again = page.sendTo(action);
        assertEquals(
                once.page().select(".issued").size(),
                again.page().select(".issued").size());
    }

    @Test
    void whoHasLeftHasNoneThatCounts() {
        List<String> cleared = listCleared();
        assertTrue(cleared.size() > 1, "another test needs the first");
        holder = cleared.get(cleared.size() - 1);
        String serial = serial(issue());
        String person = holder.replace("/certificate/of/", "/people/");
        Browser admin = site.signIn(SampleSite.ADMIN);
        admin.get(person).sendTo(person + "/leave", "day", "2026-03-05");
        assertEquals("Does not count at present", worth(lookUp(serial)));
    }

    @Test
    void whatIsNotOnRecordOrNotSignedIsToldApart() {
        assertEquals("Not on record", worth(lookUp("AbCdEfGhIjKlMnOpQrStUv")));
        assertEquals("Not signed by this site", worth(lookUp("B1.AAAA.AAAA")));
        assertEquals("Not signed by this site", worth(site.browser().get("/verify?printed=whatever")));
        assertEquals("", worth(site.browser().get("/verify")));
    }

    @Test
    void lookingUpIsLimitedForEachAddress() {
        for (int i = 0; i < 30; i++) {
            assertEquals(200, lookUp("AbCdEfGhIjKlMnOpQrStUv").status());
        }
        assertEquals(429, lookUp("AbCdEfGhIjKlMnOpQrStUv").status());
    }

    @Test
    void onlyThoseConcernedSeeACertificate() {
        String serial = serial(issue());
        String name = coordinator.get(holder).page().select("h1").text().replace("Certificates: ", "");
        assertEquals(200, site.signIn(name).get(holder).status());
        assertTrue(site.signIn(name).get(holder).page().select("main form").isEmpty());
        coordinator = site.signIn(SampleSite.COORDINATOR);
        String stranger = name.equals(SampleSite.NEW_HIRE) ? SampleSite.OTHER_NEW_HIRE : SampleSite.NEW_HIRE;
        assertEquals(404, site.signIn(stranger).get(holder).status());
        assertEquals(
                404,
                site.signIn(stranger)
                        .get("/certificate/" + serial + "/sheet.pdf")
                        .status());
    }

    @Test
    void theKeyIsPublished() {
        Reply key = site.browser().get("/certificate/key");
        assertTrue(key.body().startsWith("-----BEGIN PUBLIC KEY-----"), key.body());
        String id = VerifyingKey.ofPem(key.body()).id();
        assertTrue(site.browser().get("/verify").text().contains(id));
    }
}
