package beltmark.certificate;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.PublicKey;
import java.security.Signature;
import java.security.SignatureException;
import java.security.spec.X509EncodedKeySpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;

/** The published half of a signing key, in the form that openssl and others read (RFC 8410, PEM of RFC 7468). */
public final class VerifyingKey {

    static final String ALGORITHM = "Ed25519";

    private static final String BEGIN = "-----BEGIN PUBLIC KEY-----";
    private static final String END = "-----END PUBLIC KEY-----";
    /** What RFC 8410 puts before the 32 bytes of a key. */
    private static final byte[] PREFIX = HexFormat.of().parseHex("302a300506032b6570032100");

    private static final int ID_BYTES = 8;
    private static final int SIGNATURE_BYTES = 64;

    private final PublicKey key;

    private VerifyingKey(PublicKey key) {
        this.key = key;
    }

    static VerifyingKey ofPoint(byte[] point) {
        byte[] encoded = Arrays.copyOf(PREFIX, PREFIX.length + point.length);
        System.arraycopy(point, 0, encoded, PREFIX.length, point.length);
        return ofEncoded(encoded);
    }

    /** {@return the key in a PEM text; throws {@link IllegalArgumentException} when there is none} */
    public static VerifyingKey ofPem(String text) {
        int begin = text.indexOf(BEGIN);
        int end = text.indexOf(END);
        if (begin < 0 || end < begin) {
            throw new IllegalArgumentException("no public key in PEM form");
        }
        return ofEncoded(Base64.getMimeDecoder().decode(text.substring(begin + BEGIN.length(), end)));
    }

    private static VerifyingKey ofEncoded(byte[] encoded) {
        try {
            return new VerifyingKey(KeyFactory.getInstance(ALGORITHM).generatePublic(new X509EncodedKeySpec(encoded)));
        } catch (GeneralSecurityException e) {
            throw new IllegalArgumentException("not an Ed25519 key", e);
        }
    }

    /** {@return the key as it is published} */
    public String pem() {
        return BEGIN + "\n" + Base64.getEncoder().encodeToString(key.getEncoded()) + "\n" + END + "\n";
    }

    /** {@return what it is told by on paper: the first 16 hexadecimal digits of SHA-256 over the encoded key, in fours} */
    public String id() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(key.getEncoded());
            String digits = HexFormat.of().formatHex(digest, 0, ID_BYTES);
            return digits.replaceAll("(.{4})(?!$)", "$1-");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    boolean hasSigned(byte[] message, byte[] signature) {
        // the JDK looks at the first 64 bytes only
        if (signature.length != SIGNATURE_BYTES) {
            return false;
        }
        try {
            Signature check = Signature.getInstance(ALGORITHM);
            check.initVerify(key);
            check.update(message);
            return check.verify(signature);
        } catch (SignatureException e) {
            return false;
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
