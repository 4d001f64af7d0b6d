package beltmark.drawing;

import beltmark.core.units.Length;

/**
 * Where heights lie on a sheet.
 *
 * @param zero how far below the top edge of the sheet the height 0 lies, in millimetres of paper
 * @param scale how many millimetres of steel one millimetre of paper stands for
 */
public record Heights(double zero, double scale) {

    /** Scales of enlargement and reduction, largest first; 1 : 4 is the common inch scale, the rest are those of ISO 5455. */
    private static final double[] SCALES = {0.2, 0.5, 1, 2, 4, 5, 10, 20, 50, 100, 200, 500, 1000};

    /** {@return the largest usual scale, not larger than {@code largest}, at which a length fits into that much paper} */
    public static double scaleFor(Length length, double paper, double largest) {
        for (double scale : SCALES) {
            if (scale >= largest && length.millimetres() / scale <= paper) {
                return scale;
            }
        }
        return length.millimetres() / paper;
    }

    /** {@return how far below the top edge of the sheet a height lies, in millimetres of paper} */
    public double y(Length height) {
        return zero - paper(height);
    }

    /** {@return how long a length is on the sheet, in millimetres of paper} */
    public double paper(Length length) {
        return length.millimetres() / scale;
    }
}
