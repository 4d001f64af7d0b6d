package beltmark.web;

import java.security.SecureRandom;
import java.util.Base64;

/** Makes texts that nobody can guess. */
public final class RandomToken {

    private static final SecureRandom RANDOM = new SecureRandom();

    private RandomToken() {}

    /** {@return that many random bytes in the letters of an address} */
    public static String ofBytes(int bytes) {
        byte[] random = new byte[bytes];
        RANDOM.nextBytes(random);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(random);
    }
}
