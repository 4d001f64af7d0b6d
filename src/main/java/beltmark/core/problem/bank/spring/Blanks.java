package beltmark.core.problem.bank.spring;

import beltmark.core.measure.Unit;
import beltmark.core.problem.NumberBlank.Units;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;

/** Units and tolerances of what these families ask. */
final class Blanks {

    /** A force. */
    static final Units FORCE = new Units(Unit.NEWTON, Unit.POUND_FORCE);
    /** A line load. */
    static final Units LINE_LOAD = new Units(Unit.NEWTON_PER_MILLIMETRE, Unit.POUND_FORCE_PER_INCH);
    /** A length from one or two figures: half a sixteenth, as for a reading. */
    static final Length READING = Graduation.THIRTY_SECOND_INCH.step();
    /** A setting, or a length added up from several rounded figures: a graduation of the usual tape. */
    static final Length SETTING = Graduation.SIXTEENTH_INCH.step();

    private Blanks() {}
}
