package beltmark.people;

import java.security.SecureRandom;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/** Which PINs may be chosen: six digits that are not among the first that anybody would try. */
public final class PinRules {

    private static final int DIGITS = 6;
    private static final SecureRandom RANDOM = new SecureRandom();

    private PinRules() {}

    /** Why a chosen PIN is refused; each has a sentence in the texts. */
    public enum PinFault {
        /** Not six digits. */
        NOT_SIX_DIGITS,
        /** A run, a repetition or a year. */
        EASY_TO_GUESS,
        /** The two entries differ. */
        NOT_THE_SAME_TWICE,
        /** The PIN that is to be replaced. */
        AS_BEFORE;

        /** {@return the word of the sentence} */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** {@return why a PIN cannot be chosen, empty when it can} */
    public static Optional<PinFault> findFault(String before, String chosen, String again) {
        if (!isSixDigits(chosen)) {
            return Optional.of(PinFault.NOT_SIX_DIGITS);
        }
        if (isEasy(chosen)) {
            return Optional.of(PinFault.EASY_TO_GUESS);
        }
        if (!chosen.equals(again)) {
            return Optional.of(PinFault.NOT_THE_SAME_TWICE);
        }
        return chosen.equals(before) ? Optional.of(PinFault.AS_BEFORE) : Optional.empty();
    }

    /** {@return a random PIN that may be chosen} */
    static String random() {
        while (true) {
            String pin = String.format(Locale.ROOT, "%06d", RANDOM.nextInt(1_000_000));
            if (!isEasy(pin)) {
                return pin;
            }
        }
    }

    /** {@return whether a typed PIN has the form of one} */
    static boolean isSixDigits(String pin) {
        return pin.length() == DIGITS && pin.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    /** Equal steps (111111, 123456, 975310 has none), a repeated half or pair, fewer than 3 digits, a year at either end. */
    static boolean isEasy(String pin) {
        boolean equalSteps = IntStream.range(2, DIGITS)
                .allMatch(i -> pin.charAt(i) - pin.charAt(i - 1) == pin.charAt(1) - pin.charAt(0));
        boolean halves = pin.substring(0, 3).equals(pin.substring(3));
        boolean pairs = pin.substring(0, 2).repeat(3).equals(pin);
        boolean fewDigits = pin.chars().distinct().count() < 3;
        return equalSteps || halves || pairs || fewDigits || isYear(pin.substring(0, 4)) || isYear(pin.substring(2));
    }

    private static boolean isYear(String digits) {
        return digits.startsWith("19") || digits.startsWith("20");
    }
}
