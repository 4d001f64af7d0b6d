package beltmark.people;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Hashes PINs: Argon2id (RFC 9106) with the least cost of the OWASP password storage sheet (19 MiB, 2 passes, 1 lane), and
 * over its output HMAC-SHA-256 with the pepper. Six digits alone would fall to a stolen database within hours; without the
 * pepper, which is never in it, they cannot be tried at all. Kept as a PHC string whose last field is the HMAC.
 */
final class PinHash {

    private static final int MEMORY_KIB = 19_456;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final String PEPPER = "cGVwcGVy";

    private static final Pattern FORMAT = Pattern.compile("\\$argon2id\\$v=19\\$m=(\\d+),t=(\\d+),p=(\\d+),keyid="
            + PEPPER + "\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");

    private final SecretKeySpec pepper;
    private final SecureRandom random = new SecureRandom();

    PinHash(byte[] pepper) {
        this.pepper = new SecretKeySpec(pepper, "HmacSHA256");
    }

    /** {@return a new hash of a PIN, with a salt of its own; takes some 60 ms} */
    String hash(String pin) {
        byte[] salt = new byte[SALT_BYTES];
        random.nextBytes(salt);
        byte[] seasoned = season(argon2(pin, salt, MEMORY_KIB, PASSES, LANES));
        Base64.Encoder base64 = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + MEMORY_KIB + ",t=" + PASSES + ",p=" + LANES + ",keyid=" + PEPPER + "$"
                + base64.encodeToString(salt) + "$" + base64.encodeToString(seasoned);
    }

    /** {@return whether the PIN is the one that was hashed; as slow for a wrong one} */
    boolean matches(String pin, String hash) {
        Matcher parts = FORMAT.matcher(hash);
        if (!parts.matches()) {
            throw new IllegalStateException("a stored PIN is not in the format of this program");
        }
        byte[] salt = Base64.getDecoder().decode(parts.group(4));
        byte[] wanted = Base64.getDecoder().decode(parts.group(5));
        int memory = Integer.parseInt(parts.group(1));
        int passes = Integer.parseInt(parts.group(2));
        int lanes = Integer.parseInt(parts.group(3));
        return MessageDigest.isEqual(wanted, season(argon2(pin, salt, memory, passes, lanes)));
    }

    static byte[] argon2(String pin, byte[] salt, int memoryKib, int passes, int lanes) {
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withMemoryAsKB(memoryKib)
                .withIterations(passes)
                .withParallelism(lanes)
                .withSalt(salt)
                .build());
        byte[] hash = new byte[HASH_BYTES];
        generator.generateBytes(pin.getBytes(StandardCharsets.UTF_8), hash);
        return hash;
    }

    private byte[] season(byte[] hash) {
        try {
            Mac mac = Mac.getInstance(pepper.getAlgorithm());
            mac.init(pepper);
            return mac.doFinal(hash);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
