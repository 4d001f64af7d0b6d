package beltmark.certificate;

import beltmark.certificate.Certificates.Worth;
import beltmark.web.Page;
import beltmark.web.View;
import org.jspecify.annotations.Nullable;

/**
 * Where anybody looks up a certificate: what is printed on it and what it is worth today, nothing else.
 *
 * @param view what all pages share
 * @param typed what was scanned or entered
 * @param worth what it is worth, null when nothing was entered
 * @param keyId the id of the key of this site
 */
public record VerifyPage(View view, String typed, @Nullable Worth worth, String keyId) implements Page {

    /** {@return how certificates are worded} */
    public CertificateWords words() {
        return new CertificateWords(view.words());
    }
}
