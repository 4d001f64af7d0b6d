package beltmark.core.units;

import beltmark.core.units.LengthReading.Fault;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Reads a length as people write it: {@code 4 3/4}, {@code 4-3/4}, {@code 4¾}, {@code 4.75}, {@code 4 3/4 in},
 * {@code 4 3/4"}, {@code 120.65 mm}, {@code 120,65 mm}. A text without a unit is in the person's own.
 */
public final class LengthReader {

    private static final int LONGEST_TEXT = 40;
    private static final BigDecimal LARGEST_MILLIMETRES = BigDecimal.valueOf(1_000_000);
    private static final long FINEST_DENOMINATOR = 64;

    private static final String VULGAR = "½¼¾⅛⅜⅝⅞";
    private static final int[][] VULGAR_PARTS = {{1, 2}, {1, 4}, {3, 4}, {1, 8}, {3, 8}, {5, 8}, {7, 8}};

    private static final Map<String, LengthUnit> UNITS = Map.ofEntries(
            Map.entry("in", LengthUnit.INCH),
            Map.entry("in.", LengthUnit.INCH),
            Map.entry("inch", LengthUnit.INCH),
            Map.entry("inches", LengthUnit.INCH),
            Map.entry("\"", LengthUnit.INCH),
            Map.entry("″", LengthUnit.INCH),
            Map.entry("”", LengthUnit.INCH),
            Map.entry("''", LengthUnit.INCH),
            Map.entry("pulg", LengthUnit.INCH),
            Map.entry("pulg.", LengthUnit.INCH),
            Map.entry("pulgada", LengthUnit.INCH),
            Map.entry("pulgadas", LengthUnit.INCH),
            Map.entry("mm", LengthUnit.MILLIMETRE),
            Map.entry("mm.", LengthUnit.MILLIMETRE),
            Map.entry("millimetre", LengthUnit.MILLIMETRE),
            Map.entry("millimetres", LengthUnit.MILLIMETRE),
            Map.entry("millimeter", LengthUnit.MILLIMETRE),
            Map.entry("millimeters", LengthUnit.MILLIMETRE),
            Map.entry("milímetro", LengthUnit.MILLIMETRE),
            Map.entry("milímetros", LengthUnit.MILLIMETRE));

    private final String text;
    private int at;

    private LengthReader(String text) {
        this.text = text;
    }

    /**
     * Reads a typed text; never throws.
     *
     * @param typed what was typed, null when the field was missing
     * @param ownUnit the unit of a text that names none
     * @return the length, or why there is none
     */
    public static LengthReading read(@Nullable String typed, LengthUnit ownUnit) {
        String text = typed == null ? "" : typed.strip();
        if (text.isEmpty()) {
            return LengthReading.unreadable(ownUnit, Fault.BLANK);
        }
        if (text.length() > LONGEST_TEXT) {
            return LengthReading.unreadable(ownUnit, Fault.TOO_LONG);
        }
        return new LengthReader(text).read(ownUnit);
    }

    private LengthReading read(LengthUnit ownUnit) {
        if (isDash(peek())) {
            return LengthReading.unreadable(ownUnit, Fault.NEGATIVE);
        }
        Amount amount = readAmount();
        if (amount.fault != null) {
            return LengthReading.unreadable(ownUnit, amount.fault);
        }
        String rest = text.substring(at).strip();
        LengthUnit unit = rest.isEmpty() ? ownUnit : UNITS.get(rest.toLowerCase(Locale.ROOT));
        if (unit == null) {
            boolean word = rest.chars().allMatch(Character::isLetter);
            return LengthReading.unreadable(ownUnit, word ? Fault.UNKNOWN_UNIT : Fault.NOT_A_LENGTH);
        }
        return toLength(amount, unit);
    }

    private static LengthReading toLength(Amount amount, LengthUnit unit) {
        BigDecimal millimetres =
                amount.value.multiply(BigDecimal.valueOf(unit.nanometres())).movePointLeft(6);
        return millimetres.compareTo(LARGEST_MILLIMETRES) > 0
                ? LengthReading.unreadable(unit, Fault.TOO_LARGE)
                : LengthReading.of(Length.of(amount.value, unit), unit);
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
