package beltmark.core.lockout;

/** What an answer rests on. */
public enum Basis {
    /** A paragraph of a rule says it. */
    RULE("rule"),
    /** No paragraph says it in these words; it is good practice and is called that. */
    PRACTICE("practice"),
    /** The written procedure of the site says it. */
    PROCEDURE("procedure");

    private final String id;

    Basis(String id) {
        this.id = id;
    }

    /** {@return the name in content files and text keys} */
    public String id() {
        return id;
    }
}
