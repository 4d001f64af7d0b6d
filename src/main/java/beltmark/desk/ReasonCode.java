package beltmark.desk;

import java.util.Optional;
import java.util.stream.Stream;

/** Why retraining is ordered: the cases of 29 CFR 1910.147(c)(7)(iii)(A)-(B), as quoted in state law with the same numbering. */
enum ReasonCode {
    /** A change of job assignment. */
    JOB("job"),
    /** A change in machines, equipment or processes that presents a new hazard. */
    MACHINE("machine"),
    /** A change in the procedures. */
    PROCEDURE("procedure"),
    /** An inspection showed deviations or inadequacies. */
    INSPECTION("inspection"),
    /** Reason to believe that there are such. */
    BELIEF("belief");

    private final String id;

    ReasonCode(String id) {
        this.id = id;
    }

    /** {@return the word it is stored under, which also ends the key of its text} */
    String id() {
        return id;
    }

    static Optional<ReasonCode> find(String id) {
        return Stream.of(values()).filter(code -> code.id.equals(id)).findFirst();
    }
}
