package beltmark.certificate;

import beltmark.certificate.Certificates.Held;
import beltmark.certificate.Certificates.Worth;
import beltmark.qualification.StandingWords;
import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The certificates of one person.
 *
 * @param view what all pages share
 * @param holder who
 * @param held every qualification with its certificates
 * @param mayIssue whether the reader issues and revokes them
 * @param operation names the next change
 * @param refused why the last one was not made, null when it was or there was none
 */
public record HolderPage(
        View view,
        Holder holder,
        List<Held> held,
        boolean mayIssue,
        OperationId operation,
        @Nullable String refused) implements Page {

    public HolderPage {
        held = List.copyOf(held);
    }

    /** {@return how certificates are worded} */
    public CertificateWords words() {
        return new CertificateWords(view.words());
    }

    /** {@return where the person stands, with the day} */
    public String standing(Held one) {
        StandingWords words = new StandingWords(view.words());
        return (words.status(one.standing()) + " " + words.day(one.standing())).strip();
    }

    /** {@return whether the reader can issue a certificate of that now} */
    public boolean canIssue(Held one) {
        return mayIssue && one.standing().status().isValid();
    }

    /** {@return whether a certificate was neither revoked nor replaced, so that it can be printed} */
    public boolean isCurrent(Worth one) {
        return one.state() != CertificateState.REVOKED && one.state() != CertificateState.SUPERSEDED;
    }

    /** {@return from when to when a certificate counts} */
    public String span(Worth one) {
        Issued issued = one.issued();
        return issued == null
                ? ""
                : view.text(
                        "certificate.span",
                        "from",
                        view.words().day(issued.from()),
                        "to",
                        view.words().day(issued.to()));
    }
}
