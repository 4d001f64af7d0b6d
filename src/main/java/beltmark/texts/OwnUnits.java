package beltmark.texts;

import beltmark.core.measure.Unit;
import beltmark.core.measure.Unit.Measured;
import beltmark.core.units.Force;
import beltmark.core.units.LengthUnit;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import beltmark.core.units.Power;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Pressure;
import beltmark.core.units.Quantity;
import beltmark.core.units.Speed;
import beltmark.core.units.SpringRate;

/** The units that go with a person's tape: pounds with inches, newtons with millimetres. */
final class OwnUnits {

    private static final double KILOPASCALS_PER_MEGAPASCAL = 1000;

    private OwnUnits() {}

    /** {@return a quantity in the unit it is told in beside lengths in {@code unit}} */
    static Quantity of(Quantity quantity, LengthUnit unit) {
        return unit == LengthUnit.INCH ? withInches(quantity) : withMillimetres(quantity);
    }

    private static Quantity withMillimetres(Quantity quantity) {
        boolean low = quantity instanceof Pressure pressure && Math.abs(pressure.megapascals()) < 1;
        return low ? new Measured(quantity.amount() * KILOPASCALS_PER_MEGAPASCAL, Unit.KILOPASCAL) : quantity;
    }

    private static Quantity withInches(Quantity quantity) {
        if (quantity instanceof Force force) {
            return new Measured(force.poundsForce(), Unit.POUND_FORCE);
        }
        if (quantity instanceof LineLoad load) {
            return new Measured(load.poundsForcePerInch(), Unit.POUND_FORCE_PER_INCH);
        }
        if (quantity instanceof SpringRate rate) {
            return new Measured(rate.poundsForcePerInch(), Unit.POUND_FORCE_PER_INCH);
        }
        if (quantity instanceof Pressure pressure) {
            return new Measured(pressure.poundsForcePerSquareInch(), Unit.PSI);
        }
        if (quantity instanceof Mass mass) {
            return new Measured(mass.pounds(), Unit.POUND);
        }
        if (quantity instanceof Power power) {
            return new Measured(power.horsepower(), Unit.HORSEPOWER);
        }
        if (quantity instanceof Speed speed) {
            return new Measured(speed.feetPerMinute(), Unit.FOOT_PER_MINUTE);
        }
        return quantity instanceof PreciseLength length ? new Measured(length.inches(), Unit.INCH) : quantity;
    }
}
