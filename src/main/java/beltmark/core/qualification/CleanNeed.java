package beltmark.core.qualification;

/**
 * So many problems of a family worked with every part right at the first answer.
 *
 * @param family the family's id
 * @param count how many, at least 1
 */
public record CleanNeed(String family, int count) {

    public CleanNeed {
        if (count < 1) {
            throw new IllegalArgumentException("the count of clean " + family + " is " + count + ", not at least 1");
        }
    }
}
