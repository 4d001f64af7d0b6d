package beltmark.bank;

import java.util.Arrays;
import java.util.Optional;

/** What can be set for a single question. */
enum Switch {
    /** Its weak source was confirmed by the coordinator, so that it may be asked. */
    CONFIRMED("confirmed", "lockout.source-confirmed"),
    /** It is asked no more. */
    RETIRED("retired", "lockout.question-retired");

    private final String id;
    private final String record;

    Switch(String id, String record) {
        this.id = id;
        this.record = record;
    }

    /** {@return the name in forms, tables and text keys} */
    String id() {
        return id;
    }

    /** {@return the kind of its record} */
    String record() {
        return record;
    }

    static Optional<Switch> find(String id) {
        return Arrays.stream(values()).filter(one -> one.id.equals(id)).findFirst();
    }
}
