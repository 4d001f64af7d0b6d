package beltmark.core.qualification;

import java.util.Set;

/**
 * What an event leads to by a rule.
 *
 * @param event the event
 * @param again what must be met again by something that comes after the event; empty when the event holds until released
 * @param afterDays for a long absence, how many days may go by without anything on record; 0 for other events
 */
public record Consequence(EventKind event, Set<Needs.Kind> again, int afterDays) {

    /** The shortest absence in days that a rule may ask about; shorter gaps are not kept by date. */
    public static final int SHORTEST_ABSENCE = 28;

    public Consequence {
        again = Set.copyOf(again);
        boolean absence = event == EventKind.LONG_ABSENCE;
        if (absence && again.isEmpty()) {
            throw new IllegalArgumentException("a long absence cannot hold: nobody could release it");
        }
        if (absence ? afterDays < SHORTEST_ABSENCE : afterDays != 0) {
            throw new IllegalArgumentException(event.id() + " after " + afterDays
                    + " days; only a long absence counts days, " + SHORTEST_ABSENCE + " at least");
        }
    }

    /** {@return an event that holds until it is released} */
    public static Consequence hold(EventKind event) {
        return new Consequence(event, Set.of(), 0);
    }

    /** {@return an event after which needs must be met again} */
    public static Consequence lapse(EventKind event, Set<Needs.Kind> again) {
        if (again.isEmpty()) {
            throw new IllegalArgumentException("the event " + event.id() + " lapses until nothing is met");
        }
        return new Consequence(event, again, 0);
    }

    /** {@return so many days without anything on record, after which needs must be met again} */
    public static Consequence absence(int afterDays, Set<Needs.Kind> again) {
        return new Consequence(EventKind.LONG_ABSENCE, again, afterDays);
    }

    /** {@return whether it holds people back, rather than ending what counted} */
    public boolean holds() {
        return again.isEmpty();
    }
}
