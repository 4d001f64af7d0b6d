package beltmark.certificate;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.spec.EdECPrivateKeySpec;
import java.security.spec.NamedParameterSpec;
import org.bouncycastle.crypto.params.Ed25519PrivateKeyParameters;

/** The Ed25519 key (RFC 8032) that a site signs its certificates with: 32 random bytes of its key folder. */
public final class SigningKey {

    private final PrivateKey privateKey;
    private final VerifyingKey verifyingKey;

    /** @param seed the private key of RFC 8032, section 5.1.5 */
    public SigningKey(byte[] seed) {
        try {
            privateKey = KeyFactory.getInstance(VerifyingKey.ALGORITHM)
                    .generatePrivate(new EdECPrivateKeySpec(NamedParameterSpec.ED25519, seed));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("no Ed25519 in this Java", e);
        }
        // the JDK makes a public key only together with a random private one
        byte[] point =
                new Ed25519PrivateKeyParameters(seed, 0).generatePublicKey().getEncoded();
        verifyingKey = VerifyingKey.ofPoint(point);
    }

    /** {@return the key that checks what this one signs, to be published} */
    public VerifyingKey verifyingKey() {
        return verifyingKey;
    }

    byte[] sign(byte[] message) {
        try {
            Signature signature = Signature.getInstance(VerifyingKey.ALGORITHM);
            signature.initSign(privateKey);
            signature.update(message);
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }
}
