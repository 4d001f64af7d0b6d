package beltmark.core.qualification;

import java.util.Optional;
import java.util.stream.Stream;

/**
 * What can end or suspend a qualification before its day. The kinds follow 29 CFR 1910.147(c)(7)(iii)(A)-(B), which asks
 * for retraining upon a change of job, machine, process or procedure, and upon doubt whether somebody still knows or keeps
 * to the procedure (paragraph as quoted in state law with the same numbering); what each of them leads to is site policy.
 */
public enum EventKind {
    /** Somebody was sent back to training. */
    RETRAINING_ORDERED("retraining-ordered"),
    /** The inspection of a procedure found that it is not known or not kept to. */
    INSPECTION_FAILED("inspection-failed"),
    /** A procedure was changed. */
    PROCEDURE_CHANGED("procedure-changed"),
    /** Somebody was given another job. */
    JOB_CHANGED("job-changed"),
    /** A machine or process brings a new hazard. */
    HAZARD_ADDED("hazard-added"),
    /** Nothing of a person is on record for so many days; follows from the activity and is never recorded itself. */
    LONG_ABSENCE("long-absence");

    private final String id;

    EventKind(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name used in rule files, records and text keys} */
    public String id() {
        return id;
    }

    /** {@return the kind of a name, if there is one} */
    public static Optional<EventKind> find(String id) {
        return Stream.of(values()).filter(kind -> kind.id.equals(id)).findFirst();
    }
}
