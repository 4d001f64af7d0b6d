package beltmark.certificate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IssuedTest {

    private static Issued issued(@Nullable String revokedFor, boolean isLatest) {
        return new Issued(
                1,
                "AbCdEfGhIjKlMnOpQrStUv",
                2,
                3,
                "wide-belt-rig",
                LocalDate.of(2026, 3, 5),
                LocalDate.of(2026, 6, 30),
                Instant.EPOCH,
                "token",
                revokedFor,
                isLatest);
    }

    /** The gravest comes first: revoked, replaced, expired, does not count. */
    @ParameterizedTest
    @CsvSource({
        "no,  yes, 2026-03-05, yes, VALID",
        "no,  yes, 2026-06-30, yes, VALID",
        "no,  yes, 2026-07-01, yes, EXPIRED",
        "no,  yes, 2026-06-30, no,  SUSPENDED",
        "no,  yes, 2026-07-01, no,  EXPIRED",
        "no,  no,  2026-03-05, yes, SUPERSEDED",
        "no,  no,  2026-07-01, no,  SUPERSEDED",
        "yes, yes, 2026-03-05, yes, REVOKED",
        "yes, no,  2026-07-01, no,  REVOKED"
    })
    void isWorthWhatItsGravestFaultLeaves(
            String revoked, String latest, LocalDate today, String qualified, CertificateState worth) {
        Issued issued = issued(revoked.equals("yes") ? "mixed up" : null, latest.equals("yes"));
        assertEquals(worth, issued.state(today, qualified.equals("yes")));
    }
}
