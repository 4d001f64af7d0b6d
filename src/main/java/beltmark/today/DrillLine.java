package beltmark.today;

/**
 * One problem of today's ten minutes.
 *
 * @param family the family's id
 * @param title what it is
 * @param why why it was picked, in one sentence
 */
public record DrillLine(String family, String title, String why) {

    /** {@return the address of a fresh problem} */
    public String path() {
        return "/practice/" + family;
    }
}
