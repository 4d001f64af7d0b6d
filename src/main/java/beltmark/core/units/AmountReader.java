package beltmark.core.units;

import beltmark.core.units.LengthReading.Fault;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Reads the number in front of a unit as people write it: {@code 4}, {@code 4.75}, {@code 4,75}, {@code 4 3/4},
 * {@code 4-3/4}, {@code 4¾}. It never throws.
 */
public final class AmountReader {

    private static final long FINEST_DENOMINATOR = 64;

    private static final String VULGAR = "½¼¾⅛⅜⅝⅞";
    private static final int[][] VULGAR_PARTS = {{1, 2}, {1, 4}, {3, 4}, {1, 8}, {3, 8}, {5, 8}, {7, 8}};

    private final String text;
    private int at;

    private AmountReader(String text) {
        this.text = text;
    }

    /**
     * What was read.
     *
     * @param value exact; nought when nothing could be read
     * @param fault why nothing could be read, else null
     * @param rest what follows the number, without blanks around it
     */
    public record Reading(BigDecimal value, @Nullable Fault fault, String rest) {}

    /** {@return the number at the start of a text that has at least one character} */
    public static Reading read(String text) {
        AmountReader reader = new AmountReader(text);
        if (isDash(reader.peek())) {
            return new Reading(BigDecimal.ZERO, Fault.NEGATIVE, text);
        }
        Amount amount = reader.readAmount();
        // a number that was copied from a page has a space before its unit that does not break
        String rest = text.substring(reader.at).replace('\u00a0', ' ').replace('\u202f', ' ');
        return new Reading(amount.value, amount.fault, rest.strip());
    }

    /** A whole or decimal number, a fraction, or a whole number and a fraction. */
    private Amount readAmount() {
        int start = at;
        String digits = readDigits();
        if (peek() == '.' || peek() == ',') {
            return readDecimal(start, digits);
        }
        if (digits.isEmpty()) {
            return VULGAR.indexOf(peek()) >= 0 ? readFraction(BigDecimal.ZERO) : Amount.not(Fault.NOT_A_LENGTH);
        }
        if (isSlash(peek())) {
            at = start;
            return readFraction(BigDecimal.ZERO);
        }
        int afterWhole = at;
        skipSeparator();
        if (isDigit(peek()) || VULGAR.indexOf(peek()) >= 0) {
            return readFraction(new BigDecimal(digits));
        }
        at = afterWhole;
        return Amount.of(new BigDecimal(digits));
    }

    private Amount readDecimal(int start, String whole) {
        char mark = peek();
        at++;
        String decimals = readDigits();
        if (whole.isEmpty() && decimals.isEmpty()) {
            return Amount.not(Fault.NOT_A_LENGTH);
        }
        if (mark == ',' && decimals.length() == 3 && !whole.isEmpty() && !whole.startsWith("0")) {
            at = start;
            return Amount.not(Fault.AMBIGUOUS_COMMA);
        }
        return Amount.of(new BigDecimal("0" + whole + "." + decimals + "0"));
    }

    private Amount readFraction(BigDecimal whole) {
        int vulgar = VULGAR.indexOf(peek());
        if (vulgar >= 0) {
            at++;
            return Amount.ofFraction(whole, VULGAR_PARTS[vulgar][0], VULGAR_PARTS[vulgar][1]);
        }
        long numerator = readNumber();
        if (!isSlash(peek())) {
            return Amount.not(Fault.NOT_A_LENGTH);
        }
        at++;
        skipSpaces();
        return isDigit(peek()) ? Amount.ofFraction(whole, numerator, readNumber()) : Amount.not(Fault.NOT_A_LENGTH);
    }

    private long readNumber() {
        String digits = readDigits();
        skipSpaces();
        // no fraction of a tape has more than a few digits; a longer one is refused as improper or unknown anyway
        return Long.parseLong(digits.substring(0, Math.min(digits.length(), 18)));
    }

    private String readDigits() {
        int start = at;
        while (isDigit(peek())) {
            at++;
        }
        return text.substring(start, at);
    }

    private void skipSeparator() {
        skipSpaces();
        if (isDash(peek())) {
            at++;
            skipSpaces();
        }
    }

    private void skipSpaces() {
        while (Character.isWhitespace(peek()) || Character.isSpaceChar(peek())) {
            at++;
        }
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isDash(char c) {
        return c == '-' || c == '‐' || c == '‑' || c == '–' || c == '−';
    }

    private static boolean isSlash(char c) {
        return c == '/' || c == '⁄' || c == '∕';
    }

    private record Amount(BigDecimal value, @Nullable Fault fault) {

        static Amount of(BigDecimal value) {
            return new Amount(value, null);
        }

        static Amount not(Fault fault) {
            return new Amount(BigDecimal.ZERO, fault);
        }

        static Amount ofFraction(BigDecimal whole, long numerator, long denominator) {
            if (denominator == 0) {
                return not(Fault.ZERO_DENOMINATOR);
            }
            if (numerator >= denominator) {
                return not(Fault.IMPROPER_FRACTION);
            }
            if (denominator > FINEST_DENOMINATOR || Long.bitCount(denominator) != 1) {
                return not(Fault.NOT_ON_A_TAPE);
            }
            return of(whole.add(BigDecimal.valueOf(numerator).divide(BigDecimal.valueOf(denominator))));
        }
    }
}
