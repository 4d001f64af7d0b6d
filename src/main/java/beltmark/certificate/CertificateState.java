package beltmark.certificate;

import java.util.Locale;

/** What a certificate is worth on a day; each has its words in the texts. */
public enum CertificateState {
    /** It counts. */
    VALID,
    /** Its last day is over. */
    EXPIRED,
    /** Somebody who may do so took it back. */
    REVOKED,
    /** A later one of the same person and qualification has taken its place. */
    SUPERSEDED,
    /** The person does not have the qualification at present: held, or lapsed before the day on the certificate. */
    SUSPENDED,
    /** Signed by this site, and yet not among its records. */
    UNKNOWN,
    /** Not signed by this site, or not a letter as it was. */
    NOT_SIGNED;

    /** {@return the word in texts and style sheet} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
