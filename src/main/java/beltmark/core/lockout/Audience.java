package beltmark.core.lockout;

/** For whom a question or a paper is. */
public enum Audience {
    /** People who lock a machine out in order to service it. */
    AUTHORIZED("authorized"),
    /** People who operate the machine or work around it while it is locked out. */
    AFFECTED("affected"),
    /** Both; for questions only. */
    BOTH("both");

    private final String id;

    Audience(String id) {
        this.id = id;
    }

    /** {@return the name in content files and text keys} */
    public String id() {
        return id;
    }

    /** {@return whether a question for this audience belongs into a paper for that one} */
    public boolean fits(Audience paper) {
        return this == BOTH || this == paper;
    }
}
