package beltmark.sheet;

import beltmark.core.units.LengthUnit;
import beltmark.core.units.Speed;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a belt speed as people write it: {@code 2.5}, {@code 2,5 m/s}, {@code 490 ft/min}, {@code 490 fpm}. */
final class SpeedReader {

    private static final Pattern SPEED = Pattern.compile("(\\d{1,5}(?:[.,]\\d{1,4})?)\\s*(m/s|ft/min|fpm)?");

    private SpeedReader() {}

    /** {@return the speed, a text without a unit in feet per minute beside inches, else in metres per second} */
    static Optional<Speed> read(String typed, LengthUnit own) {
        Matcher read = matcher(typed);
        if (!read.matches()) {
            return Optional.empty();
        }
        double number = Double.parseDouble(read.group(1).replace(',', '.'));
        String unit = read.group(2) == null ? unit(own) : read.group(2);
        return Optional.of(unit.equals("m/s") ? Speed.ofMetresPerSecond(number) : Speed.ofFeetPerMinute(number));
    }

    /** {@return the text with its unit, if it is a speed without one} */
    static String withUnit(String typed, LengthUnit own) {
        Matcher read = matcher(typed);
        return read.matches() && read.group(2) == null ? typed + " " + unit(own) : typed;
    }

    private static Matcher matcher(String typed) {
        return SPEED.matcher(typed.strip().toLowerCase(Locale.ROOT));
    }

    private static String unit(LengthUnit own) {
        return own == LengthUnit.INCH ? "ft/min" : "m/s";
    }
}
