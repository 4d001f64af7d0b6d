package beltmark.web;

/** There is no such thing, or the person may not know of it; thrown by every {@code get…}, shown as page 404. */
public final class NotFound extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** @param what what was looked for, for the log only */
    public NotFound(String what) {
        super(what);
    }
}
