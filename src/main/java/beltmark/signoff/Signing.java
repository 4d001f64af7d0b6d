package beltmark.signoff;

import org.jspecify.annotations.Nullable;

/**
 * What came of signing.
 *
 * @param refusal why nothing was stored; null when it was
 * @param record the number of the record; when refused as signed otherwise, that of the earlier one, else 0
 */
record Signing(@Nullable Refusal refusal, long record) {

    static Signing refused(Refusal refusal) {
        return new Signing(refusal, 0);
    }
}
