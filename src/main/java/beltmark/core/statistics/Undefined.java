package beltmark.core.statistics;

import java.util.Locale;

/** Why a statistic cannot be computed; it is then said, in place of a number that would mean nothing. */
public enum Undefined {
    /** Nobody is counted: the share would be 0/0. */
    NOBODY,
    /** One person has no spread. */
    ONE_PERSON,
    /** A consistency between items needs two items at least. */
    ONE_ITEM,
    /** Everybody, or nobody, has the item right: it has no variance. */
    CONSTANT_ITEM,
    /** All scores are the same. */
    CONSTANT_SCORES,
    /** All scores on the other items are the same. */
    CONSTANT_REST,
    /** No cut was named. */
    NO_CUT,
    /** KR-21 is 0 or less, for which the beta-binomial model has no parameters. */
    KR21_NOT_POSITIVE,
    /** KR-21 is 1: every score is nothing or everything, which the beta-binomial model reaches only in its limit. */
    KR21_IS_ONE,
    /** The model puts everybody on the same side of the cut, so that chance agreement is complete. */
    ONE_SIDE;

    /** {@return the name in files and text keys} */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
