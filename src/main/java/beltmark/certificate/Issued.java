package beltmark.certificate;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A certificate on record.
 *
 * @param record the number of its record
 * @param serial its serial
 * @param personId whose it is
 * @param crewId the crew that person is in now
 * @param qualification the id of the qualification
 * @param from the first day
 * @param to the last day
 * @param issuedAt when it was recorded
 * @param token what is printed
 * @param revokedFor why it was revoked, null when it was not
 * @param isLatest whether no later one took its place
 */
public record Issued(
        long record,
        String serial,
        long personId,
        long crewId,
        String qualification,
        LocalDate from,
        LocalDate to,
        Instant issuedAt,
        String token,
        @Nullable String revokedFor,
        boolean isLatest) {

    /**
     * {@return what it is worth}
     *
     * @param today the day at the site
     * @param qualified whether the person has the qualification on that day
     */
    CertificateState state(LocalDate today, boolean qualified) {
        if (revokedFor != null) {
            return CertificateState.REVOKED;
        }
        if (!isLatest) {
            return CertificateState.SUPERSEDED;
        }
        if (today.isAfter(to)) {
            return CertificateState.EXPIRED;
        }
        return qualified ? CertificateState.VALID : CertificateState.SUSPENDED;
    }
}
