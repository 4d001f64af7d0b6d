package beltmark.people.first;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/**
 * A code that is printed once and typed by hand: 125 random bits as five groups of five letters and digits, of which none
 * looks like another. Good for half an hour; the next start of the server makes another one.
 */
public final class SetupCode {

    private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int GROUPS = 5;
    private static final int GROUP = 5;
    private static final Duration GOOD_FOR = Duration.ofMinutes(30);

    private final String letters;
    private final Instant end;

    private SetupCode(String letters, Instant end) {
        this.letters = letters;
        this.end = end;
    }

    /** {@return a new code} */
    public static SetupCode fresh(Instant now) {
        SecureRandom random = new SecureRandom();
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < GROUPS * GROUP; i++) {
            letters.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return new SetupCode(letters.toString(), now.plus(GOOD_FOR));
    }

    /** {@return how long it is good, in minutes} */
    public static long minutes() {
        return GOOD_FOR.toMinutes();
    }

    /** {@return the code as it is printed} */
    public String printed() {
        return letters.replaceAll("(.{" + GROUP + "})(?!$)", "$1-");
    }

    /** {@return whether that was typed in time; takes as long for every wrong one} */
    boolean matches(String typed, Instant now) {
        String plain = typed.toUpperCase(Locale.ROOT)
                .replaceAll("[^0-9A-Z]", "")
                .replace('O', '0')
                .replace('I', '1')
                .replace('L', '1');
        boolean same = MessageDigest.isEqual(
                plain.getBytes(StandardCharsets.US_ASCII), letters.getBytes(StandardCharsets.US_ASCII));
        return same && now.isBefore(end);
    }
}
