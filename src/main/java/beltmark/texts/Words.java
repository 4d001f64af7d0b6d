package beltmark.texts;

import beltmark.core.solution.Step;
import beltmark.core.units.Graduated;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthReading;
import beltmark.core.units.LengthSpan;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The texts as one person reads them: in their language, with lengths in their graduation and times of the site. */
public final class Words {

    private static final List<String> STEPS = List.of("problem.step.", "step.", "setup.step.");
    private static final String DAY = "d MMM yyyy";
    /** Figures shown of a computed force, energy or angle: more than any of them is known to. */
    private static final int FIGURES = 3;

    private final Map<String, Message> texts;
    private final Glossary glossary;
    private final Language language;
    private final Graduation graduation;
    private final ZoneId zone;

    Words(Map<String, Message> texts, Glossary glossary, Language language, Graduation graduation, ZoneId zone) {
        this.texts = texts;
        this.glossary = glossary;
        this.language = language;
        this.graduation = graduation;
        this.zone = zone;
    }

    /** {@return the text of a key without values} */
    public String say(String key) {
        return say(key, Map.of());
    }

    /**
     * Says a text with values. A {@link Length} is told in the person's graduation, a {@link Word} by its own key,
     * another {@link Quantity} as number and unit, a date or an instant as people write it; numbers and strings reach
     * the text as they are, so that it can choose by number.
     *
     * @param key a key that exists, else {@link IllegalStateException}
     * @param values at least the values that the text names
     * @return the text
     */
    public String say(String key, Map<String, ?> values) {
        Message message = texts.get(key);
        if (message == null) {
            throw new IllegalStateException("there is no text " + key + " in " + language);
        }
        Map<String, Object> told = new HashMap<>();
        values.forEach((name, value) -> told.put(name, tell(value)));
        try {
            return message.say(told);
        } catch (IllegalStateException | IllegalArgumentException e) {
            throw new IllegalStateException("text " + key + " " + e.getMessage(), e);
        }
    }

    /** {@return whether there is a text of that key} */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /** {@return the sentence of a step: a problem's own, else the one of the calculations, else the one of the set-up} */
    public String step(Step step) {
        String key = STEPS.stream()
                .map(topic -> topic + step.id())
                .filter(this::has)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("there is no sentence of step " + step.id()));
        return say(key, step.values());
    }

    private Object tell(Object value) {
        if (value instanceof Quantity quantity) {
            return quantity(quantity);
        }
        if (value instanceof LocalDate date) {
            return day(date);
        }
        return value instanceof Instant instant ? time(instant) : value;
    }

    /** {@return a quantity as people read it: a length in the own graduation or that of its tape, a word, or a number in the own units} */
    public String quantity(Quantity quantity) {
        if (quantity instanceof Length length) {
            return length(length);
        }
        if (quantity instanceof Graduated tape) {
            return LengthPrinter.print(tape.length(), tape.graduation());
        }
        if (quantity instanceof Word word) {
            return say(word.key());
        }
        Quantity own = OwnUnits.of(quantity, graduation.unit());
        String number = number(own.amount());
        if (own.unit().equals("°")) {
            return number + own.unit();
        }
        return own.unit().isEmpty() ? number : number + " " + own.unit();
    }

    /** {@return a length in the person's graduation, with its unit} */
    public String length(Length length) {
        return LengthPrinter.print(length, graduation);
    }

    /** {@return in one sentence how a typed length was read, or why it could not be} */
    public String reading(LengthReading reading) {
        LengthReading.Fault fault = reading.fault();
        if (fault != null) {
            return say("reading.fault." + fault.name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
        LengthUnit own = graduation.unit();
        LengthUnit other = own == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        Length length = reading.getLength();
        return say(
                "reading.read-as",
                Map.of("length", LengthPrinter.exact(length, own), "other", LengthPrinter.exact(length, other)));
    }

    /** {@return in one sentence why a typed length is none that the measure can have; empty when it is one} */
    public Optional<String> fault(LengthReading reading, LengthSpan plausible) {
        if (!reading.isReadable()) {
            return Optional.of(reading(reading));
        }
        LengthSpan.Fit fit = plausible.fit(reading);
        return fit == LengthSpan.Fit.INSIDE
                ? Optional.empty()
                : Optional.of(say(
                        "reading.fault." + fit.id(),
                        Map.of("length", reading.getLength(), "from", plausible.from(), "to", plausible.to())));
    }

    /** {@return a number to three figures, whole numbers of more figures in full} */
    public String number(double amount) {
        if (!Double.isFinite(amount)) {
            throw new IllegalArgumentException(amount + " cannot be told");
        }
        BigDecimal exact = BigDecimal.valueOf(amount);
        BigDecimal rounded = Math.abs(amount) >= Math.pow(10, FIGURES)
                ? exact.setScale(0, RoundingMode.HALF_EVEN)
                : exact.round(new MathContext(FIGURES, RoundingMode.HALF_EVEN));
        NumberFormat format = NumberFormat.getNumberInstance(language.locale());
        format.setMaximumFractionDigits(Math.max(0, rounded.scale()));
        return format.format(rounded);
    }

    /** {@return a date such as 5 Mar 2026} */
    public String day(LocalDate date) {
        return DateTimeFormatter.ofPattern(DAY, language.locale()).format(date);
    }

    /** {@return the date of an instant at the site} */
    public String day(Instant instant) {
        return day(LocalDate.ofInstant(instant, zone));
    }

    /** {@return date and time of an instant at the site, such as 5 Mar 2026, 14:05} */
    public String time(Instant instant) {
        return DateTimeFormatter.ofPattern(DAY + ", HH:mm", language.locale())
                .withZone(zone)
                .format(instant);
    }

    /** {@return the time zone of the site} */
    public ZoneId zone() {
        return zone;
    }

    /** {@return the words of the trade in this language} */
    public Glossary glossary() {
        return glossary;
    }

    /** {@return the language of these texts} */
    public Language language() {
        return language;
    }

    /** {@return how finely, and in which unit, lengths are told} */
    public Graduation graduation() {
        return graduation;
    }
}
