package beltmark.core.problem;

import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * The short code that, with the family, names one practice problem and can be passed on by word of mouth. Letters and
 * digits only; case, spaces and hyphens do not matter, and O, I and L are read as 0, 1 and 1, as in Crockford's base 32.
 *
 * @param text the code as it is kept: 1 to 11 of the characters 0-9 and A-Z without I, L and O
 */
public record ProblemCode(String text) {

    /** The longest code that is read. */
    public static final int LONGEST = 11;

    private static final String FRESH_CHARACTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final int FRESH_LENGTH = 6;
    private static final int RADIX = 36;

    public ProblemCode {
        if (!text.matches("[0-9A-HJKMNP-Z]{1," + LONGEST + "}")) {
            throw new IllegalArgumentException("\"" + text + "\" is not a problem code");
        }
    }

    /** {@return the code that was typed, or empty when it is blank, too long or has other characters} */
    public static Optional<ProblemCode> parse(String typed) {
        String text = typed.length() > 4 * LONGEST
                ? ""
                : typed.replaceAll("[\\s-]", "")
                        .toUpperCase(Locale.ROOT)
                        .replace('O', '0')
                        .replace('I', '1')
                        .replace('L', '1');
        return text.matches("[0-9A-Z]{1," + LONGEST + "}") ? Optional.of(new ProblemCode(text)) : Optional.empty();
    }

    /** {@return a code nobody has chosen, one of about a thousand million} */
    public static ProblemCode fresh(RandomGenerator random) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < FRESH_LENGTH; i++) {
            text.append(FRESH_CHARACTERS.charAt(random.nextInt(FRESH_CHARACTERS.length())));
        }
        return new ProblemCode(text.toString());
    }

    /** {@return the code as a number; different for different codes, also where one has more zeros in front} */
    long number() {
        return Long.parseLong("1" + text, RADIX);
    }
}
