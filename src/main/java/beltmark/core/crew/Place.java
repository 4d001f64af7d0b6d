package beltmark.core.crew;

/**
 * So many people needed with one qualification.
 *
 * @param qualification its id
 * @param count how many people, 0 or more
 */
public record Place(String qualification, int count) {

    public Place {
        if (count < 0) {
            throw new IllegalArgumentException(count + " people with " + qualification);
        }
    }
}
