package beltmark;

/** The address asked for cannot be listened on; carries the text that says why. */
final class CannotListen extends Exception {

    private static final long serialVersionUID = 1;

    private final String key;

    /** @param key the text, which may tell {@code host} and {@code port} */
    CannotListen(String key) {
        super(key);
        this.key = key;
    }

    String key() {
        return key;
    }
}
