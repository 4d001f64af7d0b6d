package beltmark.core.refusal;

import java.util.Locale;

/** Why a calculation is refused. Each name has one sentence in the text files, under the key {@link #key()}. */
public enum Refusal {
    /** A value is not a number. */
    NOT_A_NUMBER,
    /** A number is below or above what the quantity can be; negative or zero where that is impossible, or huge. */
    OUT_OF_RANGE,
    /** A number with a fraction where things are counted. */
    NOT_WHOLE,
    /** The coil diameter is not larger than the wire. */
    COIL_NOT_LARGER_THAN_WIRE,
    /** A spring without active coils. */
    NO_ACTIVE_COILS,
    /** A spring whose free length is not above its solid length: it cannot be compressed at all. */
    FREE_NOT_ABOVE_SOLID,
    /** A spring longer than its free length: it is loose and carries nothing. */
    SPRING_LOOSE,
    /** A spring shorter than its solid length: its coils would have to overlap. */
    COIL_BIND,
    /** The load is beyond what holds the spring solid. */
    LOAD_BEYOND_SOLID,
    /** The springs do not carry the moving weight: the blade does not touch the belt. */
    NO_CONTACT,
    /** Friction holds the assembly: it jams and does not follow the belt. */
    JAM,
    /** The blade reaches beyond the springs that carry it. */
    BLADE_OFF_ITS_SPAN,
    /** The force acts beyond the end of the blade: it would tip. */
    TIPS_OVER,
    /** The bushing is off its sleeve, or would be: nothing is left to drop. */
    NO_SLEEVE_LEFT,
    /** Neither way round leaves the clearance that is asked for. */
    NOTHING_FITS,
    /** The lowest point lies above the highest one, or the floor above the roof. */
    UPSIDE_DOWN,
    /** The head of the bolt is in the plate. */
    BOLT_IN_PLATE,
    /** The blade is wider than the belt. */
    BLADE_WIDER_THAN_BELT,
    /** An end of the blade is in the wall. */
    BLADE_IN_WALL,
    /** Diagonals that no marks of this length and width can have. */
    DIAGONALS_IMPOSSIBLE,
    /** A height beyond what the arm can reach. */
    BEYOND_ARM,
    /** More is left on the belt after the cleaner than before it. */
    AFTER_EXCEEDS_BEFORE,
    /** No coil is large and strong enough at once for the load. */
    WIRE_TOO_THIN,
    /** Already at or below the voltage that counts as safe, or a final voltage that is never reached. */
    VOLTAGE_NOT_ABOVE_LIMIT,
    /** A gas pressure not above that of the surroundings. */
    NOT_PRESSURISED,
    /** Two units that measure different things. */
    UNITS_DO_NOT_MATCH,
    /** Something is asked about a list without members. */
    NOTHING_GIVEN,
    /** A chart without a row for this blade. */
    NOT_ON_CHART;

    /** {@return the key of the sentence in the text files} */
    public String key() {
        return "refusal." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
