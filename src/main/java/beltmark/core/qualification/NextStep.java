package beltmark.core.qualification;

/** What to do next for a qualification. */
public enum NextStep {
    /** Work problems of a family until enough are clean. */
    PRACTISE("practise"),
    /** Pass the quiz. */
    PASS_QUIZ("pass-quiz"),
    /** Show a set-up in the field and have it signed off. */
    DEMONSTRATE("demonstrate"),
    /** Clear up the hold with whoever ordered it. */
    CLEAR_HOLD("clear-hold"),
    /** Nothing for now. */
    NONE("none");

    private final String id;

    NextStep(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name used in text keys} */
    public String id() {
        return id;
    }
}
