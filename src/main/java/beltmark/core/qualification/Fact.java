package beltmark.core.qualification;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;

/**
 * Something on record that counts for or against a qualification. It has two times: the day on which it happened, and
 * the moment from which it was known.
 *
 * @param record the number of the record that says so; of two facts of one day the higher one came later
 * @param kind what it says
 * @param scope whom it concerns
 * @param subject the id of the family, quiz, paper, card or event; empty where there is none
 * @param by the number of the person who signed a demonstration; 0 otherwise
 * @param of the number of the record that is released or withdrawn; 0 otherwise
 * @param on the day at the site on which it happened
 * @param knownAt when it was recorded
 */
public record Fact(
        long record, FactKind kind, Scope scope, String subject, long by, long of, LocalDate on, Instant knownAt) {

    /** By day, and within a day by record. */
    static final Comparator<Fact> BY_TIME = Comparator.comparing(Fact::on).thenComparingLong(Fact::record);
}
