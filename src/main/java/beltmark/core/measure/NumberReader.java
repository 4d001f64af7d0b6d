package beltmark.core.measure;

import beltmark.core.units.AmountReader;
import beltmark.core.units.LengthReading.Fault;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Reads a number with its unit as people write it: {@code 444.7 N}, {@code 100 lbf}, {@code 12,5 %}, {@code 2 1/4}. A text
 * without a unit is in the person's own.
 */
public final class NumberReader {

    private static final int LONGEST_TEXT = 40;
    private static final double LARGEST = 1e12;

    /** Other ways in which people write a unit, in small letters. */
    private static final Map<String, Unit> ALSO = Map.ofEntries(
            Map.entry("lb/in", Unit.POUND_FORCE_PER_INCH),
            Map.entry("lbs", Unit.POUND),
            Map.entry("lbf.", Unit.POUND_FORCE),
            Map.entry("ft lbf", Unit.FOOT_POUND_FORCE),
            Map.entry("ft-lbf", Unit.FOOT_POUND_FORCE),
            Map.entry("ft·lbf", Unit.FOOT_POUND_FORCE),
            Map.entry("ft-lb", Unit.FOOT_POUND_FORCE),
            Map.entry("ft lb", Unit.FOOT_POUND_FORCE),
            Map.entry("fpm", Unit.FOOT_PER_MINUTE),
            Map.entry("g/m2", Unit.GRAM_PER_SQUARE_METRE),
            Map.entry("deg", Unit.DEGREE),
            Map.entry("º", Unit.DEGREE),
            Map.entry("degrees", Unit.DEGREE),
            Map.entry("grados", Unit.DEGREE),
            Map.entry("sec", Unit.SECOND),
            Map.entry("seconds", Unit.SECOND),
            Map.entry("segundos", Unit.SECOND),
            Map.entry("minutes", Unit.MINUTE),
            Map.entry("minutos", Unit.MINUTE),
            Map.entry("hours", Unit.HOUR),
            Map.entry("horas", Unit.HOUR),
            Map.entry("days", Unit.DAY),
            Map.entry("días", Unit.DAY),
            Map.entry("turns", Unit.ONE),
            Map.entry("turn", Unit.ONE),
            Map.entry("vueltas", Unit.ONE),
            Map.entry("vuelta", Unit.ONE),
            Map.entry("pulg", Unit.INCH),
            Map.entry("\"", Unit.INCH),
            Map.entry("″", Unit.INCH));

    private NumberReader() {}

    /** Why a text is no number of the wanted kind. */
    public enum Trouble {
        /** Nothing was typed. */
        BLANK,
        /** More characters than any number needs. */
        TOO_LONG,
        /** A minus sign in front. */
        NEGATIVE,
        /** A fraction over nought. */
        ZERO_DENOMINATOR,
        /** A fraction of one or more, such as 4 17/16. */
        IMPROPER_FRACTION,
        /** A comma that may part thousands or decimals. */
        AMBIGUOUS_COMMA,
        /** A unit that is not known or measures something else. */
        OTHER_KIND,
        /** Beyond anything asked here. */
        TOO_LARGE,
        /** Not a number at all. */
        NOT_A_NUMBER
    }

    /**
     * What was read.
     *
     * @param amount as typed, in {@code unit}
     * @param unit the unit typed, or the person's own when none was typed
     * @param trouble why nothing was read, else null
     */
    public record Reading(
            double amount, Unit unit, @Nullable Trouble trouble) {}

    /**
     * Reads a typed text; never throws.
     *
     * @param typed what was typed, null when the field was missing
     * @param own the unit of a text that names none
     * @return the number, or why there is none
     */
    public static Reading read(@Nullable String typed, Unit own) {
        String text = typed == null ? "" : typed.strip();
        if (text.isEmpty() || text.length() > LONGEST_TEXT) {
            return new Reading(0, own, text.isEmpty() ? Trouble.BLANK : Trouble.TOO_LONG);
        }
        AmountReader.Reading read = AmountReader.read(text);
        if (read.fault() != null) {
            return new Reading(0, own, trouble(read.fault()));
        }
        Optional<Unit> unit = read.rest().isEmpty() ? Optional.of(own) : find(read.rest(), own);
        double amount = read.value().doubleValue();
        return unit.map(known -> new Reading(amount, known, amount > LARGEST ? Trouble.TOO_LARGE : null))
                .orElse(new Reading(0, own, Trouble.OTHER_KIND));
    }

    private static Optional<Unit> find(String written, Unit own) {
        String small = written.toLowerCase(Locale.ROOT);
        return Stream.concat(
                        Stream.of(Unit.values()).filter(unit -> unit.symbol().equalsIgnoreCase(written)),
                        Stream.ofNullable(ALSO.get(small)))
                .filter(own::isLike)
                .findFirst()
                .or(() -> mass(small, own));
    }

    /** Crews say pounds for pounds-force, and on a scale it is the same number. */
    private static Optional<Unit> mass(String small, Unit own) {
        boolean pounds = small.equals("lb") || small.equals("lbs");
        return pounds && own.isLike(Unit.POUND_FORCE) ? Optional.of(Unit.POUND_FORCE) : Optional.empty();
    }

    private static Trouble trouble(Fault fault) {
        return switch (fault) {
            case BLANK -> Trouble.BLANK;
            case TOO_LONG -> Trouble.TOO_LONG;
            case NEGATIVE -> Trouble.NEGATIVE;
            case ZERO_DENOMINATOR -> Trouble.ZERO_DENOMINATOR;
            case IMPROPER_FRACTION -> Trouble.IMPROPER_FRACTION;
            case AMBIGUOUS_COMMA -> Trouble.AMBIGUOUS_COMMA;
            case TOO_LARGE -> Trouble.TOO_LARGE;
            case UNKNOWN_UNIT -> Trouble.OTHER_KIND;
            case NOT_ON_A_TAPE, NOT_A_LENGTH -> Trouble.NOT_A_NUMBER;
        };
    }
}
