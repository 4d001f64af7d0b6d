package beltmark.practice;

/**
 * One family on the practice page.
 *
 * @param family the family's id
 * @param title what it is
 * @param state where the person stands, in one sentence
 * @param mastered whether it is mastered for now
 */
public record SkillLine(String family, String title, String state, boolean mastered) {

    /** {@return the address of a fresh problem} */
    public String path() {
        return "/practice/" + family;
    }
}
