package beltmark.core.units;

import java.util.Locale;

/**
 * What a measured length can be at all. Whatever lies outside was typed in the wrong unit or by accident.
 *
 * @param from the least
 * @param to the most; not below the least
 */
public record LengthSpan(Length from, Length to) {

    public LengthSpan {
        if (to.compareTo(from) < 0) {
            throw new IllegalArgumentException("no span from " + from + " to " + to);
        }
    }

    /** How a reading fits. Each but the first has one sentence in the text files. */
    public enum Fit {
        /** It can be. */
        INSIDE,
        /** It cannot be as it was read, and could be when taken in the other unit. */
        OTHER_UNIT,
        /** It cannot be in either unit. */
        OUT_OF_RANGE;

        /** {@return the hyphenated name used in text keys} */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** {@return the span between whole millimetres} */
    public static LengthSpan ofMillimetres(int from, int to) {
        return new LengthSpan(Length.ofMillimetres(from), Length.ofMillimetres(to));
    }

    /** {@return whether a length lies inside, the ends too} */
    public boolean spans(Length length) {
        return length.compareTo(from) >= 0 && length.compareTo(to) <= 0;
    }

    /**
     * Judges what was read; a unit that was typed may be the wrong one as well as one that was left out.
     *
     * @param reading a readable text
     * @return how it fits
     */
    public Fit fit(LengthReading reading) {
        if (spans(reading.getLength())) {
            return Fit.INSIDE;
        }
        LengthUnit other = reading.unit() == LengthUnit.INCH ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        double timesOver = (double) other.nanometres() / reading.unit().nanometres();
        return spans(reading.getLength().times(timesOver)) ? Fit.OTHER_UNIT : Fit.OUT_OF_RANGE;
    }
}
