package beltmark.print;

import beltmark.core.units.Graduation;
import beltmark.core.units.LengthUnit;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The sheets that are printed on, upright. */
public enum Paper {
    /** ISO 216, 210 by 297 millimetres. */
    A4(210, 297, 18),
    /** ANSI/ASME Y14.1 size A, 8 1/2 by 11 inches. */
    LETTER(215.9, 279.4, 18),
    /** The ID-1 card of ISO/IEC 7810, 85.6 by 54 millimetres. */
    CARD(85.6, 53.98, 4);

    private final double widthMillimetres;
    private final double heightMillimetres;
    private final double marginMillimetres;

    Paper(double widthMillimetres, double heightMillimetres, double marginMillimetres) {
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
        this.marginMillimetres = marginMillimetres;
    }

    /**
     * {@return the sheet that was asked for; else the one that people who read lengths like that have in their printer}
     *
     * @param asked {@code a4} or {@code letter}, anything else when nothing was chosen
     * @param graduation how the person reads lengths
     */
    public static Paper of(@Nullable String asked, Graduation graduation) {
        if (A4.word().equals(asked)) {
            return A4;
        }
        boolean inches = graduation.unit() == LengthUnit.INCH;
        return LETTER.word().equals(asked) || inches ? LETTER : A4;
    }

    /** {@return the word that an address chooses it by} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return size and margin as a rule of a style sheet} */
    String css() {
        return String.format(
                Locale.ROOT,
                "@page { size: %.2fmm %.2fmm; margin: %.0fmm; }",
                widthMillimetres,
                heightMillimetres,
                marginMillimetres);
    }
}
