package beltmark.certificate;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TokenTest {

    private static final SigningKey KEY = new SigningKey(new byte[32]);
    private static final Payload PAYLOAD = new Payload(
            "AbCdEfGhIjKlMnOpQrStUv",
            "Nguyễn Thị Đặng-O'Brien",
            "wide-belt-rig",
            "wide-belt-rig",
            LocalDate.of(2026, 3, 5),
            LocalDate.of(2027, 3, 4),
            Instant.parse("2026-03-05T08:00:00Z"),
            KEY.verifyingKey().id());

    private static Optional<Payload> open(String token) {
        return Token.open(token, KEY.verifyingKey());
    }

    @Test
    void comesBackAsItWasSigned() {
        assertEquals(Optional.of(PAYLOAD), open(Token.of(PAYLOAD, KEY)));
    }

    @Test
    void everyChangeOfOneCharacterIsRefused() {
        String token = Token.of(PAYLOAD, KEY);
        String others = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_.=+/ é\u0000";
        int tried = 0;
        for (int at = 0; at < token.length(); at++) {
            for (int i = 0; i < others.length(); i++) {
                char other = others.charAt(i);
                if (other != token.charAt(at)) {
                    String changed = token.substring(0, at) + other + token.substring(at + 1);
                    assertEquals(Optional.empty(), open(changed), () -> changed);
                    tried++;
                }
            }
        }
        assertTrue(tried > 15_000, tried + " tried");
    }

    @Test
    void everyMissingOrAddedCharacterIsRefused() {
        String token = Token.of(PAYLOAD, KEY);
        for (int at = 0; at <= token.length(); at++) {
            String before = token.substring(0, at);
            assertEquals(Optional.empty(), open(before + "A" + token.substring(at)));
            assertEquals(Optional.empty(), open(before + "=" + token.substring(at)));
            if (at < token.length()) {
                assertEquals(Optional.empty(), open(before + token.substring(at + 1)));
                assertEquals(Optional.empty(), open(before));
            }
        }
    }

    @Test
    void anotherKeyHasNotSignedIt() {
        byte[] seed = new byte[32];
        seed[0] = 1;
        assertEquals(Optional.empty(), Token.open(Token.of(PAYLOAD, KEY), new SigningKey(seed).verifyingKey()));
    }

    @Test
    void aSignedTextThatIsNoPayloadIsRefused() {
        for (String text :
                List.of("", "a\nb", "x\n".repeat(8), new String(PAYLOAD.bytes(), StandardCharsets.UTF_8) + "\n")) {
            String signed = "B1."
                    + Base64.getUrlEncoder().withoutPadding().encodeToString(text.getBytes(StandardCharsets.UTF_8));
            byte[] signature = KEY.sign(signed.getBytes(StandardCharsets.US_ASCII));
            String token =
                    signed + "." + Base64.getUrlEncoder().withoutPadding().encodeToString(signature);
            assertEquals(Optional.empty(), open(token));
        }
    }

    @Test
    void aPayloadHoldsNoLineFeed() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Payload(
                        PAYLOAD.serial(), "A\nB", "q", "", PAYLOAD.from(), PAYLOAD.to(), PAYLOAD.issuedAt(), "k"));
    }

    @Test
    void whatIsCopiedFromAnAddressIsStripped() {
        String token = Token.of(PAYLOAD, KEY);
        assertEquals(
                token,
                Token.strip(" https://belts.example/verify/" + token.substring(0, 90) + "\r\n" + token.substring(90)));
    }

    /** RFC 8032, section 7.1, TEST 1 and TEST 2; typed from memory, and right, or they would not fit each other. */
    @Test
    void keysAndSignaturesAreThoseOfTheStandard() {
        assertStandard(
                "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
                "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a",
                "",
                "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46b"
                        + "d25bf5f0595bbe24655141438e7a100b");
        assertStandard(
                "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
                "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c",
                "72",
                "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c"
                        + "387b2eaeb4302aeeb00d291612bb0c00");
    }

    private static void assertStandard(String seed, String point, String message, String signature) {
        HexFormat hex = HexFormat.of();
        SigningKey key = new SigningKey(hex.parseHex(seed));
        assertTrue(
                key.verifyingKey().pem().contains(spki(point)),
                key.verifyingKey().pem());
        assertArrayEquals(hex.parseHex(signature), key.sign(hex.parseHex(message)));
        assertTrue(key.verifyingKey().hasSigned(hex.parseHex(message), hex.parseHex(signature)));
    }

    private static String spki(String point) {
        return Base64.getEncoder().encodeToString(HexFormat.of().parseHex("302a300506032b6570032100" + point));
    }

    @Test
    void aPublishedKeyIsReadBack() {
        VerifyingKey key = KEY.verifyingKey();
        assertEquals(
                key.id(),
                VerifyingKey.ofPem("note\n" + key.pem().replace("\n", "\r\n")).id());
        assertTrue(key.id().matches("([0-9a-f]{4}-){3}[0-9a-f]{4}"), key.id());
        assertThrows(IllegalArgumentException.class, () -> VerifyingKey.ofPem("nothing"));
        assertThrows(
                IllegalArgumentException.class,
                () -> VerifyingKey.ofPem("-----BEGIN PUBLIC KEY-----\nAAAA\n-----END PUBLIC KEY-----"));
    }
}
