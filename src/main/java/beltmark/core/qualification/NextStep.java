package beltmark.core.qualification;

/** What to do next for a qualification. */
public enum NextStep {
    /** Work problems of a family until enough are clean. */
    PRACTISE("practise"),
    /** Pass the quiz. */
    PASS_QUIZ("pass-quiz"),
    /** Pass a paper. */
    PASS_PAPER("pass-paper"),
    /** Become qualified for something else first. */
    QUALIFY_FIRST("qualify-first"),
    /** Do some work that goes on record, before the absence is a long one. */
    WORK_AGAIN("work-again"),
    /** See what the next version of the rule asks for. */
    MEET_NEW_RULE("meet-new-rule"),
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
