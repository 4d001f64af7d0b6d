package beltmark.core.problem.bank.job;

import java.util.Locale;
import java.util.stream.Stream;

/**
 * What is behind a fault after start-up: how it shows, what on the table is not as wanted, and its remedy. Common
 * practice, no published source.
 */
enum Fault {
    TOO_HARD("chatter", "to-card", "springs", "loads"),
    LOOSE_NUT("chatter", "lock-nut", "nuts"),
    UNEVEN("one-sided", "to-card", "springs", "loads"),
    OFF_CENTRE("one-sided", "centre", "loads", "beyond"),
    TOO_LIGHT("streaks", "to-card", "springs", "loads"),
    NICKED("streaks", "new-tip", "edge"),
    LITTLE_SLEEVE("hits", "to-mark", "sleeve"),
    TALL_SPLICE("hits", "splice-down", "splice");

    private final String shows;
    private final String remedy;
    private final String off;
    private final String alsoOff;

    Fault(String shows, String remedy, String off) {
        this(shows, remedy, off, off);
    }

    Fault(String shows, String remedy, String off, String alsoOff) {
        this.shows = shows;
        this.remedy = remedy;
        this.off = off;
        this.alsoOff = alsoOff;
    }

    /** {@return the cause as an option, without its prefix} */
    String cause() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    String shows() {
        return shows;
    }

    String remedy() {
        return remedy;
    }

    /** {@return whether a row of the table is not as wanted} */
    boolean isOff(String row) {
        return row.equals(off) || row.equals(alsoOff);
    }

    /** {@return the fault of a cause; the other one where there is none} */
    static Fault ofCause(String option, Fault other) {
        return Stream.of(values())
                .filter(fault -> option.equals("fault-" + fault.cause()))
                .findFirst()
                .orElse(other);
    }
}
