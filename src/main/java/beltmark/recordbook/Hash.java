package beltmark.recordbook;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A SHA-256 hash (FIPS 180-4).
 *
 * @param hex its 32 bytes as 64 lower-case hexadecimal digits
 */
public record Hash(String hex) {

    /** What stands for the previous hash in the first record: 32 zero bytes. */
    public static final Hash NONE = new Hash("0".repeat(64));

    private static final HexFormat HEX = HexFormat.of();

    public Hash {
        if (!hex.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("not 64 lower-case hexadecimal digits: " + hex);
        }
    }

    static Hash of(byte[] bytes) {
        return new Hash(HEX.formatHex(bytes));
    }

    byte[] bytes() {
        return HEX.parseHex(hex);
    }

    /** The leaf hash of RFC 6962, section 2.1: a tree can be built over the same hashes one day. */
    static Hash ofLeaf(byte[] leaf) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update((byte) 0);
            return of(digest.digest(leaf));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
