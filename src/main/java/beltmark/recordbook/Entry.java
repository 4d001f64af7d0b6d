package beltmark.recordbook;

import java.time.Instant;

/**
 * Something to be recorded.
 *
 * @param kind what it is: feature and noun, as in {@code practice.answer}
 * @param operation the id of the form or request it came by; a second entry with the same one is not recorded again
 * @param subject the person it is about
 * @param actor the person who did it
 * @param happenedAt when it is said to have happened, kept to the millisecond
 * @param body a Java record, kept as JSON
 */
public record Entry(String kind, String operation, long subject, long actor, Instant happenedAt, Object body) {

    public Entry {
        if (!body.getClass().isRecord()) {
            throw new IllegalArgumentException("the body of " + kind + " is a " + body.getClass() + ", not a record");
        }
    }
}
