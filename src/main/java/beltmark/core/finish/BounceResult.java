package beltmark.core.finish;

import beltmark.core.units.Word;

/**
 * What came of the bounce test: the pole is pressed down by hand, belt standing and locked out, and let go. Common
 * practice, no published source; that a stuck bushing or one slow side shows here follows from the guide friction, which
 * is all that keeps a pushed pole from coming back.
 */
public enum BounceResult {
    /** Both sides come back at once and together; the only result that is as it should be. */
    EVEN("even"),
    /** Both come back, but slowly. */
    SLOW("slow"),
    /** One side comes back later than the other. */
    ONE_SIDE("one-side"),
    /** It stays down, or one side does. */
    STUCK("stuck"),
    /** Nobody pressed it down. */
    NOT_DONE("not-done");

    private final String id;

    BounceResult(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name used in forms, records and text keys} */
    public String id() {
        return id;
    }

    /** {@return this result as a word} */
    public Word word() {
        return new Word("finish.bounce." + id);
    }
}
