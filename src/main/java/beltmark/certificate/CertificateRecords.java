package beltmark.certificate;

import java.time.LocalDate;

/** Bodies of the records of certificates. */
final class CertificateRecords {

    static final String ISSUED = "certificate.issued";
    static final String REVOKED = "certificate.revoked";

    private CertificateRecords() {}

    /**
     * A certificate was issued.
     *
     * @param serial its serial
     * @param person the name on it
     * @param qualification the id of the qualification
     * @param from the first day
     * @param to the last day
     * @param supersedes the serial whose place it takes, empty when there is none
     * @param token payload and signature, as printed
     */
    record IssuedBody(
            String serial,
            String person,
            String qualification,
            LocalDate from,
            LocalDate to,
            String supersedes,
            String token) {}

    /**
     * A certificate was revoked.
     *
     * @param serial its serial
     * @param reason why
     */
    record RevokedBody(String serial, String reason) {}
}
