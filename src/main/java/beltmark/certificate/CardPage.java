package beltmark.certificate;

import beltmark.print.QrCode;
import beltmark.web.Page;
import beltmark.web.View;

/**
 * A certificate as a card for the wallet, front and back.
 *
 * @param view what all pages share
 * @param payload what it says
 * @param code the code to be scanned
 * @param address where it is looked up by hand
 */
public record CardPage(View view, Payload payload, QrCode code, String address) implements Page {

    /** {@return how certificates are worded} */
    public CertificateWords words() {
        return new CertificateWords(view.words());
    }
}
