package beltmark.certificate;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/**
 * A payload with its signature, as it stands in the QR code: {@code B1.payload.signature}, the two parts in base64url
 * without padding (RFC 4648, section 5). Signed is everything before the last full stop, so also the version. A text that
 * another way of writing could have given, such as different unused bits in a last letter, is none.
 */
public final class Token {

    private static final String VERSION = "B1";
    private static final int PARTS = 3;
    private static final int LONGEST = 2000;

    private Token() {}

    static String of(Payload payload, SigningKey key) {
        String signed = VERSION + "." + encode(payload.bytes());
        return signed + "." + encode(key.sign(signed.getBytes(StandardCharsets.US_ASCII)));
    }

    /** {@return the payload of a token that the key has signed, every character as it was; else empty} */
    public static Optional<Payload> open(String token, VerifyingKey key) {
        String[] parts = token.split("\\.", -1);
        if (parts.length != PARTS || !parts[0].equals(VERSION) || token.length() > LONGEST) {
            return Optional.empty();
        }
        byte[] signed = (parts[0] + "." + parts[1]).getBytes(StandardCharsets.UTF_8);
        return decode(parts[2])
                .filter(signature -> key.hasSigned(signed, signature))
                .flatMap(signature -> decode(parts[1]))
                .flatMap(Payload::parse);
    }

    /** {@return what was scanned or copied without the address in front and without blanks and line ends in it} */
    public static String strip(String typed) {
        String plain = typed.replaceAll("\\s", "");
        return plain.substring(plain.lastIndexOf('/') + 1);
    }

    private static String encode(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private static Optional<byte[]> decode(String text) {
        try {
            byte[] bytes = Base64.getUrlDecoder().decode(text);
            return encode(bytes).equals(text) ? Optional.of(bytes) : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
