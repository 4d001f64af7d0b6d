package beltmark.core.qualification;

/** What kind of thing a fact says. */
public enum FactKind {
    /** A problem of a family was worked clean; the subject is the family. */
    CLEAN("clean"),
    /** A quiz was passed; the subject is the quiz. */
    QUIZ_PASSED("quiz-passed"),
    /** A paper was passed; the subject is the paper. */
    PAPER_PASSED("paper-passed"),
    /** A set-up was shown and signed; the subject is the hardware card. */
    DEMONSTRATION("demonstration"),
    /** Held back whatever the rules say, until released. */
    HOLD("hold"),
    /** Something happened that a rule may answer with a hold or a lapse; the subject is an {@link EventKind}. */
    EVENT("event"),
    /** An earlier hold, or an event that holds, is over. */
    RELEASE("release"),
    /** What an earlier record said does not count, and never should have. */
    WITHDRAWAL("withdrawal");

    private final String id;

    FactKind(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name it is stored under} */
    public String id() {
        return id;
    }
}
