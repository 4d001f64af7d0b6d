package beltmark.web;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * The token that shows that a form came from our own page: HMAC-SHA-256 over the visitor's cookie under a key that only
 * the server has. Nothing is stored, so any number of pages may be open at once.
 */
final class FormTokens {

    /** Name of the hidden form field. */
    static final String FIELD = "csrf";

    private static final String ALGORITHM = "HmacSHA256";

    private final SecretKeySpec key;

    FormTokens(byte[] key) {
        this.key = new SecretKeySpec(key, ALGORITHM);
    }

    /** {@return the token for the visitor with that cookie} */
    String of(String cookie) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(key);
            byte[] code = mac.doFinal(("form:" + cookie).getBytes(StandardCharsets.UTF_8));
            return Base64.getUrlEncoder().withoutPadding().encodeToString(code);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return whether the token belongs to that cookie; takes as long for every wrong one} */
    boolean belongsTo(String cookie, String token) {
        return MessageDigest.isEqual(
                of(cookie).getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }
}
