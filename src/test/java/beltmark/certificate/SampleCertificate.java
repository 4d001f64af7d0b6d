package beltmark.certificate;

import java.time.Instant;
import java.time.LocalDate;

/** A signed code and the key for it. */
public final class SampleCertificate {

    private static final SigningKey KEY = new SigningKey(new byte[32]);

    private SampleCertificate() {}

    /** {@return what a QR code would hold} */
    public static String token() {
        return Token.of(
                new Payload(
                        "AbCdEfGhIjKlMnOpQrStUv",
                        "Ana Beltrán",
                        "wide-belt-rig",
                        "wide-belt-rig",
                        LocalDate.of(2026, 3, 5),
                        LocalDate.of(2027, 3, 4),
                        Instant.parse("2026-03-05T08:00:00Z"),
                        KEY.verifyingKey().id()),
                KEY);
    }

    /** {@return the published key} */
    public static String pem() {
        return KEY.verifyingKey().pem();
    }
}
