package beltmark.certificate;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a certificate says. Written as eight lines of UTF-8 text, in the order of the components, with a line feed between
 * and none at the end; days and times as ISO 8601. There is one way only to write a payload.
 *
 * @param serial 22 letters, digits, hyphens or underscores: 128 random bits
 * @param person the name of the person
 * @param qualification the id of the qualification
 * @param card the id of the hardware card, empty when it is for none
 * @param from the first day
 * @param to the last day
 * @param issuedAt when it was issued, to the second
 * @param keyId the {@linkplain VerifyingKey#id() id} of the key it is signed with
 */
public record Payload(
        String serial,
        String person,
        String qualification,
        String card,
        LocalDate from,
        LocalDate to,
        Instant issuedAt,
        String keyId) {

    private static final int LINES = 8;

    public Payload {
        if (!isSerial(serial)) {
            throw new IllegalArgumentException("not a serial: " + serial.length() + " characters");
        }
        for (String text : List.of(person, qualification, card, keyId)) {
            if (text.codePoints().anyMatch(Character::isISOControl)) {
                throw new IllegalArgumentException("a control character in " + qualification);
            }
        }
        if (to.isBefore(from) || !issuedAt.equals(issuedAt.truncatedTo(ChronoUnit.SECONDS))) {
            throw new IllegalArgumentException("from " + from + " to " + to + ", issued " + issuedAt);
        }
    }

    /** {@return whether a text has the form of a serial} */
    public static boolean isSerial(String text) {
        return text.matches("[A-Za-z0-9_-]{22}");
    }

    byte[] bytes() {
        return String.join(
                        "\n",
                        serial,
                        person,
                        qualification,
                        card,
                        from.toString(),
                        to.toString(),
                        issuedAt.toString(),
                        keyId)
                .getBytes(StandardCharsets.UTF_8);
    }

    /** {@return the payload that is written like that, empty when none is} */
    static Optional<Payload> parse(byte[] bytes) {
        String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
        if (lines.length != LINES) {
            return Optional.empty();
        }
        try {
            Payload payload = new Payload(
                    lines[0],
                    lines[1],
                    lines[2],
                    lines[3],
                    LocalDate.parse(lines[4]),
                    LocalDate.parse(lines[5]),
                    Instant.parse(lines[6]),
                    lines[7]);
            return Arrays.equals(payload.bytes(), bytes) ? Optional.of(payload) : Optional.empty();
        } catch (DateTimeException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
