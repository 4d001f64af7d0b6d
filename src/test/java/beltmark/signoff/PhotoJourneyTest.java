package beltmark.signoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleDemonstration;
import beltmark.SampleSite;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PhotoJourneyTest {

    private static final String BOUNDARY = "----between-the-parts";
    /** Degrees, minutes and seconds as a camera writes them: 12/1 34/1 56/1, big-endian (Exif 2.3, tag GPSLatitude). */
    private static final byte[] LATITUDE = {0, 0, 0, 12, 0, 0, 0, 1, 0, 0, 0, 34, 0, 0, 0, 1, 0, 0, 0, 56, 0, 0, 0, 1};

    @SuppressWarnings("NullAway.Init")
    private static SampleSite site;

    @SuppressWarnings("NullAway.Init")
    private static Reply signed;

    @BeforeAll
    static void start() {
        site = SampleSite.start();
        signed = SampleDemonstration.sign(site, SampleSite.SUPERVISOR, SampleSite.NEW_HIRE);
    }

    @AfterAll
    static void stop() {
        site.close();
    }

    @Test
    void aPhotoIsKeptUnderItsHashWithoutThePlaceWhereItWasTaken() throws IOException {
        byte[] taken = withPlace(image("jpeg", 64, 48));
        assertTrue(contains(taken, LATITUDE));
        assertEquals(303, send(taken).statusCode());
        String hash = hashes().get(hashes().size() - 1);
        byte[] kept = Files.readAllBytes(site.folder().resolve("photos").resolve(hash + ".jpg"));
        assertFalse(contains(kept, LATITUDE));
        assertFalse(contains(kept, "Exif".getBytes(StandardCharsets.US_ASCII)));
        assertEquals(64, ImageIO.read(new ByteArrayInputStream(kept)).getWidth());
        assertTrue(body().contains(hash), body());
        Reply page = signed.browser().get(path());
        assertTrue(page.text().contains(hash));
        assertEquals("image/jpeg", signed.browser().get(path() + ".jpg").header("Content-Type"));
    }

    @Test
    void aPngIsTakenToo() throws IOException {
        assertEquals(303, send(image("png", 20, 20)).statusCode());
    }

    @Test
    void whatIsNoPhotoIsRefusedByItsContent() throws IOException {
        long before = hashes().size();
        for (byte[] sent : List.of(
                "GIF89a, or so it says".getBytes(StandardCharsets.US_ASCII),
                image("gif", 10, 10),
                new byte[0],
                Arrays.copyOf(image("jpeg", 64, 48), 40))) {
            HttpResponse<String> refused = send(sent);
            assertEquals(422, refused.statusCode());
            assertTrue(refused.body().contains("Choose a JPEG or PNG"));
        }
        assertEquals(before, hashes().size());
    }

    @Test
    void moreThanFourMegabytesAreRefused() throws IOException {
        long before = hashes().size();
        int status = send(new byte[5 * 1024 * 1024]).statusCode();
        assertTrue(status == 413 || status == 400, () -> "status " + status);
        assertEquals(before, hashes().size());
    }

    @Test
    void nobodyElseSeesIt() throws IOException {
        send(image("jpeg", 30, 30));
        for (String name : List.of(SampleSite.OTHER_SUPERVISOR, SampleSite.NEW_HIRE)) {
            Browser other = site.signIn(name);
            int wanted = name.equals(SampleSite.NEW_HIRE) ? 403 : 404;
            assertEquals(wanted, other.get(path() + ".jpg").status());
            assertEquals(wanted, other.get(path()).status());
        }
    }

    private static String path() {
        return signed.path() + "/photo";
    }

    private static HttpResponse<String> send(byte[] photo) throws IOException {
        Reply form = signed.browser().get(path());
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (String field : List.of("csrf", "operation")) {
            String value = form.page().select("main form [name=" + field + "]").attr("value");
            write(
                    body,
                    "--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + field + "\"\r\n\r\n" + value
                            + "\r\n");
        }
        write(
                body,
                "--" + BOUNDARY
                        + "\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.jpg\"\r\nContent-Type: image/jpeg\r\n\r\n");
        body.write(photo);
        write(body, "\r\n--" + BOUNDARY + "--\r\n");
        HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + site.port() + path()))
                .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                .header("Cookie", "s=" + signed.browser().cookies().get("s"))
                .POST(BodyPublishers.ofByteArray(body.toByteArray()))
                .build();
        try {
            return HttpClient.newHttpClient().send(request, BodyHandlers.ofString());
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void write(ByteArrayOutputStream body, String text) {
        body.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] image(String format, int width, int height) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), format, out);
        return out.toByteArray();
    }

    /** The same JPEG with an APP1 segment behind its first two bytes, as cameras write it. */
    private static byte[] withPlace(byte[] jpeg) {
        byte[] exif = "Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII);
        int length = 2 + exif.length + LATITUDE.length;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.writeBytes(new byte[] {(byte) 0xff, (byte) 0xe1, (byte) (length >> 8), (byte) length});
        out.writeBytes(exif);
        out.writeBytes(LATITUDE);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static boolean contains(byte[] bytes, byte[] part) {
        String all = new String(bytes, StandardCharsets.ISO_8859_1);
        return all.contains(new String(part, StandardCharsets.ISO_8859_1));
    }

    private static List<String> hashes() throws IOException {
        Path photos = site.folder().resolve("photos");
        if (!Files.exists(photos)) {
            return List.of();
        }
        return site.database()
                .read(handle -> handle.createQuery("SELECT sha256 FROM signoff_photo ORDER BY seq")
                        .mapTo(String.class)
                        .list());
    }

    private static String body() {
        return site.database()
                .read(handle -> handle.createQuery(
                                "SELECT body FROM recordbook_entry WHERE kind = 'signoff.photo' ORDER BY seq DESC LIMIT 1")
                        .mapTo(String.class)
                        .one());
    }
}
