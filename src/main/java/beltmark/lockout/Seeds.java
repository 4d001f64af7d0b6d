package beltmark.lockout;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Where the seed of a sitting comes from: what it asks, and in which order, follows from it. */
@FunctionalInterface
public interface Seeds {

    /** HMAC with SHA-256 (RFC 2104, FIPS 180-4). */
    String ALGORITHM = "HmacSHA256";

    /**
     * Gives a seed.
     *
     * @param quiz the id of the quiz
     * @param person who sits it
     * @param earlier how many sittings of it that person has opened before
     */
    long of(String quiz, long person, long earlier);

    /** {@return seeds that nobody can foresee without the key, which is kept outside the database} */
    static Seeds keyed(byte[] key) {
        SecretKeySpec secret = new SecretKeySpec(key, ALGORITHM);
        return (quiz, person, earlier) -> {
            try {
                Mac mac = Mac.getInstance(ALGORITHM);
                mac.init(secret);
                String sitting = quiz + "/" + person + "/" + earlier;
                return ByteBuffer.wrap(mac.doFinal(sitting.getBytes(StandardCharsets.UTF_8)))
                        .getLong();
            } catch (GeneralSecurityException e) {
                throw new IllegalStateException("every Java has " + ALGORITHM, e);
            }
        };
    }
}
