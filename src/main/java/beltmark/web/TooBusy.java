package beltmark.web;

/** Too many ask at once for something costly; nothing was done, and the same again in a few seconds may be. */
public final class TooBusy extends RuntimeException {

    private static final long serialVersionUID = 1;

    /**
     * @param what what there is too much of, for the log only
     * @param cause what refused
     */
    public TooBusy(String what, Throwable cause) {
        super(what, cause);
    }
}
