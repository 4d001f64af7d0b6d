package beltmark.ownrecord;

import java.time.Instant;
import java.util.List;

/**
 * A record of a person.
 *
 * @param record its number
 * @param kind what it is
 * @param about the name of the person it is about
 * @param by the name of the person who did it
 * @param happenedAt when it is said to have happened
 * @param recordedAt when it was stored
 * @param body what was recorded, as JSON
 */
record OwnEntry(
        long record, String kind, String about, String by, Instant happenedAt, Instant recordedAt, String body) {

    private static final List<String> OF_TESTS = List.of("paper.", "lockout.");

    /** {@return whether this belongs to a paper or a quiz, which may still be under way} */
    boolean isOfTest() {
        return OF_TESTS.stream().anyMatch(kind::startsWith);
    }

    /** {@return the same record without what was recorded} */
    OwnEntry withoutBody() {
        return new OwnEntry(record, kind, about, by, happenedAt, recordedAt, "{}");
    }
}
