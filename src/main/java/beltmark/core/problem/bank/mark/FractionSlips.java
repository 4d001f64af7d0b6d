package beltmark.core.problem.bank.mark;

import beltmark.core.measure.InchSum;
import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;

/** The known wrong ways to add, take off and halve inch fractions. */
final class FractionSlips {

    private static final Length ONE_INCH = Length.ofInches(1);
    private static final int SIXTEEN = 16;
    private static final int TEN = 10;

    private FractionSlips() {}

    static List<Slip> sum(Length first, Length second) {
        InchFraction a = InchFraction.of(first);
        InchFraction b = InchFraction.of(second);
        int wholes = a.whole() + b.whole();
        Length right = InchSum.plus(first, second).result();
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip("subtracted", first.minus(second)));
        slips.add(new Slip("straight-across", InchFraction.length(wholes, a.over() + b.over(), a.under() + b.under())));
        if (a.under() != b.under()) {
            int coarser = Math.max(a.under(), b.under());
            slips.add(new Slip("not-made-alike", InchFraction.length(wholes, a.over() + b.over(), coarser)));
        }
        if (InchSum.carries(first, second)) {
            slips.add(new Slip("carry-forgotten", right.minus(ONE_INCH)));
        }
        if (b.under() == SIXTEEN) {
            slips.add(new Slip("sixteenths-as-eighths", right.plus(b.rest())));
        }
        return slips;
    }

    static List<Slip> difference(Length first, Length second) {
        InchFraction a = InchFraction.of(first);
        InchFraction b = InchFraction.of(second);
        Length right = InchSum.minus(first, second).result();
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip("added", first.plus(second)));
        if (InchSum.borrows(first, second)) {
            slips.add(new Slip("borrowed-inch-not-taken", right.plus(ONE_INCH)));
            slips.add(new Slip("borrowed-as-ten", right.minus(InchFraction.length(0, SIXTEEN - TEN, SIXTEEN))));
            Length turned = b.rest().minus(a.rest());
            slips.add(new Slip(
                    "fractions-turned-round",
                    InchFraction.length(a.whole() - b.whole(), 0, 1).plus(turned)));
        } else {
            slips.add(new Slip("fraction-left-out", first.minus(InchFraction.length(b.whole(), 0, 1))));
        }
        if (b.under() == SIXTEEN) {
            slips.add(new Slip("sixteenths-as-eighths", right.minus(b.rest())));
        }
        return slips;
    }

    static List<Slip> half(Length width) {
        InchFraction whole = InchFraction.of(width);
        Length right = InchSum.half(width).result();
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip("fraction-not-halved", right.plus(whole.rest().times(0.5))));
        slips.add(new Slip("denominator-halved", right.plus(whole.rest().times(1.5))));
        if (whole.whole() % 2 == 1) {
            slips.add(new Slip("odd-inch-dropped", right.minus(ONE_INCH.times(0.5))));
        }
        return slips;
    }
}
