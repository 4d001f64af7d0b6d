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

    private LengthReader() {}

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
        return read(AmountReader.read(text), ownUnit);
    }

    private static LengthReading read(AmountReader.Reading amount, LengthUnit ownUnit) {
        if (amount.fault() != null) {
            return LengthReading.unreadable(ownUnit, amount.fault());
        }
        String rest = amount.rest();
        LengthUnit unit = rest.isEmpty() ? ownUnit : UNITS.get(rest.toLowerCase(Locale.ROOT));
        if (unit == null) {
            boolean word = rest.chars().allMatch(Character::isLetter);
            return LengthReading.unreadable(ownUnit, word ? Fault.UNKNOWN_UNIT : Fault.NOT_A_LENGTH);
        }
        return toLength(amount.value(), unit);
    }

    private static LengthReading toLength(BigDecimal amount, LengthUnit unit) {
        BigDecimal millimetres =
                amount.multiply(BigDecimal.valueOf(unit.nanometres())).movePointLeft(6);
        return millimetres.compareTo(LARGEST_MILLIMETRES) > 0
                ? LengthReading.unreadable(unit, Fault.TOO_LARGE)
                : LengthReading.of(Length.of(amount, unit), unit);
    }
}
