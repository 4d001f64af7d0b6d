package beltmark.signoff;

import org.jspecify.annotations.Nullable;

/**
 * What came of signing.
 *
 * @param refusal why nothing was stored; null when it was
 * @param record the number of the record; when refused as signed otherwise, that of the earlier one, else 0
 */
public record Signing(@Nullable Refusal refusal, long record) {

    static Signing refused(Refusal refusal) {
        return new Signing(refusal, 0);
    }

    /** Does nothing when it was stored, else throws {@link IllegalStateException}; for whoever knows that it must be. */
    public void requireStored() {
        if (refusal != null) {
            throw new IllegalStateException("a demonstration was refused: " + refusal);
        }
    }
}
