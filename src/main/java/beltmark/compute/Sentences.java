package beltmark.compute;

import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import beltmark.texts.Words;
import java.text.NumberFormat;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** The sentences of the answers: lengths as exactly as they are printed, and nothing repeated at more length than one takes in. */
record Sentences(Words words) {

    private static final int LONGEST_ECHO = 60;
    private static final double LARGEST_IN_FULL = 1e15;
    private static final int DECIMALS = 12;
    /** The values that repeat what stands in the line. */
    private static final Set<String> ECHOES = Set.of("field", "quantity", "what");

    boolean has(String key) {
        return words.has(key);
    }

    String say(String key) {
        return words.say(key);
    }

    String say(String key, Map<String, ?> values) {
        Map<String, Object> told = new HashMap<>();
        values.forEach((name, value) -> told.put(name, told(name, value)));
        return words.say(key, told);
    }

    private Object told(String name, Object value) {
        if (value instanceof Length length) {
            return name.equals("graduation")
                    ? Graduations.idOfStep(length)
                    : LengthPrinter.exact(length, LengthUnit.MILLIMETRE);
        }
        if (value instanceof Double number) {
            return number(number);
        }
        return value instanceof String text && ECHOES.contains(name) ? briefly(text) : value;
    }

    private String number(double number) {
        if (Math.abs(number) > LARGEST_IN_FULL && Double.isFinite(number)) {
            return Double.toString(number);
        }
        NumberFormat format = NumberFormat.getNumberInstance(words.language().locale());
        format.setMaximumFractionDigits(DECIMALS);
        return format.format(number);
    }

    private static String briefly(String text) {
        return text.length() > LONGEST_ECHO ? text.substring(0, LONGEST_ECHO) + "…" : text;
    }
}
