package beltmark.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeadersTest {

    private static final Map<String, String> HEADERS = new SecurityHeaders(false).headers();

    @SuppressWarnings("NullAway.Init")
    private static SampleSite site;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @ParameterizedTest
    @CsvSource({
        "GET, /, 303",
        "GET, /sign-in, 200",
        "GET, /today, 303",
        "GET, /nothing, 404",
        "GET, /sign-in/abc, 404",
        "GET, /sign-in/999999999999999999999999, 404",
        "GET, /reading, 303",
        "DELETE, /sign-in, 405",
        "OPTIONS, /sign-in, 405",
        "HEAD, /sign-in, 405",
        "POST, /settings, 401",
        "POST, /sign-out, 403",
        "GET, /static/nothing.css, 404",
        "GET, /static/..%2f..%2fbeltmark.db, 404",
        "GET, /%zz, 400"
    })
    void standOnEveryAnswerOfOurs(String method, String path, int status) throws IOException {
        String answer =
                raw(method + " " + path + " HTTP/1.1\r\nHost: x\r\nConnection: close\r\nContent-Length: 0\r\n\r\n");
        assertTrue(answer.startsWith("HTTP/1.1 " + status), answer);
        assertHeaders(answer);
    }

    @Test
    void standOnWhatTheHttpLayerRefusesByItself() throws IOException {
        List<String> malformed = List.of(
                "GET / HTTP/9.9\r\nHost: x\r\n\r\n",
                "GET / HTTP/1.1\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\nHost: y\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: a b\r\n\r\n",
                "G@T / HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET /a b HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET /\0 HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET /../../etc/passwd HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET /" + "a".repeat(9_000) + " HTTP/1.1\r\nHost: x\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\nX: " + "a".repeat(9_000) + "\r\n\r\n",
                "POST / HTTP/1.1\r\nHost: x\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\nab",
                "POST / HTTP/1.1\r\nHost: x\r\nContent-Length: -1\r\n\r\n",
                "POST / HTTP/1.1\r\nHost: x\r\nContent-Length: 1\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
                "POST / HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: nonsense\r\n\r\n0\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\nExpect: nonsense\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\nbad header\r\n\r\n",
                "GET / HTTP/1.1\r\nHost: x\r\n : y\r\n\r\n",
                "PRI * HTTP/2.0\r\n\r\nSM\r\n\r\n",
                "\r\n\r\n\r\nnonsense\r\n\r\n",
                "GET http:// HTTP/1.1\r\nHost: x\r\n\r\n");
        for (String request : malformed) {
            String answer = raw(request);
            assertTrue(answer.matches("(?s)HTTP/1\\.[01] [345]\\d\\d.*"), show(request) + " gave " + show(answer));
            assertHeaders(answer);
            assertFalse(answer.contains("org.eclipse") || answer.contains("\tat "), show(request));
        }
    }

    @Test
    void letStaticFilesBeKept() {
        Reply page = site.browser().get("/sign-in");
        String sheet = page.page().select("link[rel=stylesheet]").attr("href");
        Reply css = site.browser().get(sheet);
        assertEquals(200, css.status());
        assertEquals("public, max-age=31536000, immutable", css.header("Cache-Control"));
        assertEquals("text/css;charset=utf-8", type(css));
        assertEquals("no-store", page.header("Cache-Control"));
        assertEquals("text/html;charset=utf-8", type(page));
    }

    @Test
    void tellNothingOfTheServer() {
        Reply page = site.browser().get("/sign-in");
        assertEquals("", page.header("Server") + page.header("X-Powered-By") + page.header("ETag"));
    }

    @Test
    void tieCookiesToTheHostBehindTls() {
        try (SampleSite behindTls = SampleSite.startBehindTls()) {
            Reply page = behindTls.browser().get("/sign-in");
            String cookie = page.header("Set-Cookie");
            assertTrue(cookie.startsWith("__Host-v="), cookie);
            assertTrue(
                    cookie.contains("Secure") && cookie.contains("HttpOnly") && cookie.contains("SameSite=Lax"),
                    cookie);
            assertFalse(cookie.contains("Domain"), cookie);
            assertTrue(page.header("Strict-Transport-Security").startsWith("max-age=63072000"));
        }
    }

    @Test
    void answerAFormThatIsTooLarge() {
        Browser browser = site.browser();
        Reply form =
                browser.get("/sign-in/" + site.crewId(SampleSite.NEW_HIRE) + "/" + site.personId(SampleSite.NEW_HIRE));
        Reply reply = form.send("pin", "1".repeat(70_000));
        assertEquals(413, reply.status());
        assertTrue(reply.text().contains("larger than any form"), reply.text());
    }

    private static String type(Reply reply) {
        return reply.header("Content-Type").toLowerCase(Locale.ROOT).replace(" ", "");
    }

    private static void assertHeaders(String answer) {
        String head = answer.split("\r\n\r\n", 2)[0].toLowerCase(Locale.ROOT) + "\r\n";
        HEADERS.forEach((name, value) -> assertTrue(
                head.contains("\r\n" + (name + ": " + value).toLowerCase(Locale.ROOT) + "\r\n"),
                name + " is missing from " + show(answer)));
        assertFalse(head.contains("\r\nserver:"), show(answer));
    }

    private static String show(String text) {
        return text.substring(0, Math.min(300, text.length())).replace("\r\n", "|");
    }

    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), site.port())) {
            socket.setSoTimeout(5_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
            socket.shutdownOutput();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }
}
