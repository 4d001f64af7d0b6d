package beltmark.core.finish;

/** What is read at the blade after a set-up. */
public enum FinishReading {
    /** How far the middle of the blade is off the middle of the belt. */
    CENTRING("centring"),
    /** The angle between the blade and the belt. */
    BLADE_ANGLE("blade-angle"),
    /** What came of the bounce test. */
    BOUNCE("bounce"),
    /** The height of the tallest splice. */
    SPLICE("splice");

    private final String id;

    FinishReading(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name used in forms, records and text keys} */
    public String id() {
        return id;
    }
}
