package beltmark.compute;

import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.Quantity;

/** A length as a tape in inches shows it: printed as text beside the number. */
record PrintedLength(Length length) implements Quantity {

    String text() {
        return LengthPrinter.print(length, Graduation.SIXTY_FOURTH_INCH);
    }

    @Override
    public double amount() {
        return length.inches();
    }

    @Override
    public String unit() {
        return "";
    }
}
