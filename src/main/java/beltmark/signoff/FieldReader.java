package beltmark.signoff;

import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthSpan;
import beltmark.texts.Words;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Reads the fields of the sign-off form one by one and collects what is wrong with them, worded. */
final class FieldReader {

    private static final String FAULT = "signoff.fault.";
    private static final double FLATTEST_DEGREES = 20;
    private static final double STEEPEST_DEGREES = 160;

    private final DemonstrationForm form;
    private final Words words;
    private final Map<String, String> faults = new LinkedHashMap<>();

    /**
     * @param form what was sent
     * @param words the words of whoever typed it; a length without a unit is in theirs
     */
    FieldReader(DemonstrationForm form, Words words) {
        this.form = form;
        this.words = words;
    }

    /** {@return what was picked; the first option, beside a fault, when it is none of them} */
    <T> T pick(String field, List<T> options, Function<T, String> id, String fault) {
        Optional<T> picked = options.stream()
                .filter(option -> id.apply(option).equals(form.value(field)))
                .findFirst();
        if (picked.isEmpty()) {
            fault(field, fault);
        }
        return picked.orElse(options.get(0));
    }

    /** {@return a text of so many characters on one line, as typed; beside a fault when it is another} */
    String text(String field, int least, int most) {
        String typed = form.value(field);
        int length = typed.codePointCount(0, typed.length());
        if (length < least) {
            fault(field, field.equals(DemonstrationForm.CONVEYOR) ? "conveyor-blank" : "explain-short");
        } else if (length > most || typed.contains("\n")) {
            fault(field, field.equals(DemonstrationForm.CONVEYOR) ? "conveyor-long" : "explain-long");
        }
        return typed;
    }

    /** {@return the length typed, or a stand-in beside a fault} */
    Length length(String field, LengthSpan plausible) {
        LengthReading reading =
                LengthReader.read(form.value(field), words.graduation().unit());
        words.fault(reading, plausible).ifPresent(fault -> faults.put(field, fault));
        return reading.isReadable() ? reading.getLength() : Length.ZERO;
    }

    /** {@return the angle typed in degrees, or a stand-in beside a fault} */
    Angle angle(String field) {
        String typed = form.value(field).replace("°", "").replace(',', '.').strip();
        double degrees = typed.matches("[0-9]{1,3}(\\.[0-9]{1,2})?") ? Double.parseDouble(typed) : 0;
        if (degrees < FLATTEST_DEGREES || degrees > STEEPEST_DEGREES) {
            fault(field, "angle");
        }
        return Angle.ofDegrees(degrees);
    }

    /** {@return what a clock of the device said, null when it did not, or not readably} */
    @Nullable
    static Instant time(String typed) {
        try {
            return typed.isEmpty() ? null : Instant.parse(typed);
        } catch (DateTimeException unreadable) {
            return null;
        }
    }

    void fault(String field, String id) {
        faults.put(field, words.say(FAULT + id));
    }

    /** {@return what is wrong, worded, by field} */
    Map<String, String> faults() {
        return Map.copyOf(faults);
    }
}
