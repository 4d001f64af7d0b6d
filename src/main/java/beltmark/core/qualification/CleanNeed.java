package beltmark.core.qualification;

/**
 * So many problems of a family worked with every part right at the first answer.
 *
 * @param family the family's id
 * @param count how many, 1 to {@link #MOST}
 */
public record CleanNeed(String family, int count) {

    /** The most that a rule may ask for; only so many are kept by date. */
    public static final int MOST = 10;

    public CleanNeed {
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException("the count of clean " + family + " is " + count + ", not 1 to " + MOST);
        }
    }
}
