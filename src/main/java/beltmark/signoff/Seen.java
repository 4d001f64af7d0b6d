package beltmark.signoff;

/** What a supervisor says of one observation. */
public enum Seen {
    /** It was done, and seen. */
    YES("yes"),
    /** It was seen not to be done, or done wrongly. */
    NO("no"),
    /** It was not seen, so nothing can be said of it. */
    NOT_SEEN("not-seen");

    private final String id;

    Seen(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name used in forms, records and text keys} */
    public String id() {
        return id;
    }
}
