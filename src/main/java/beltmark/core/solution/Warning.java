package beltmark.core.solution;

import java.util.Locale;

/** What is doubtful about a result that stands. Each name has one sentence in the text files, under {@link #key()}. */
public enum Warning {
    /** A spring index outside 4..12: hard to wind, or prone to tangle and buckle (Shigley eq. 10-18, seen second-hand). */
    INDEX_OUTSIDE_4_TO_12,
    /** Fewer than 3 or more than 15 active coils (Shigley eq. 10-19, seen second-hand). */
    COILS_OUTSIDE_3_TO_15,
    /** A wire outside the diameters for which the strength was published. */
    WIRE_OUTSIDE_TABLE,
    /** Less than 15 % of force left before the coils touch (Shigley eq. 10-17, seen second-hand). */
    THIN_OVERRUN,
    /** A safety factor below 1.2 when the coils touch (Shigley eq. 10-21, seen second-hand). */
    SAFETY_BELOW_1_2,
    /** A spring slender enough to buckle. */
    MAY_BUCKLE,
    /** A natural frequency of the spring below 15 times the frequency of what drives it. */
    SURGE_NEAR_FORCING,
    /** The load acts outside the middle third of the blade: one end lifts off the belt. */
    EDGE_LIFTS,
    /** The bushing or the coils leave less drop than the splice is high. */
    TRAVEL_SHORT,
    /** The setting comes from the card's chart, which differs from the computed one by more than a graduation. */
    CHART_DIFFERS,
    /** The card's chart has no row for this blade: the setting is the computed one, rounded to a graduation. */
    NOT_ON_CHART,
    /** A contact pressure outside the usual 30..100 kPa. */
    PRESSURE_OUTSIDE_30_TO_100_KPA,
    /** A friction coefficient outside the usual 0.5..0.7. */
    FRICTION_OUTSIDE_0_5_TO_0_7,
    /** With this mistracking an end of the blade runs over the edge of the belt. */
    NEGATIVE_EDGE_MARGIN,
    /** The belt touches the structure. */
    BELT_TOUCHES_STRUCTURE,
    /** Friction alone holds the belt, as far as the friction can be relied on. */
    HELD_BY_FRICTION,
    /** More than 100 kJ of compressed gas (a university's safety page, seen as an excerpt, calls this highly hazardous). */
    GAS_ENERGY_OVER_100_KJ,
    /** The voltage is already at or below the limit. */
    ALREADY_BELOW_LIMIT,
    /** A cleaner that removes nothing. */
    NOTHING_REMOVED;

    /** {@return the key of the sentence in the text files} */
    public String key() {
        return "warning." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
