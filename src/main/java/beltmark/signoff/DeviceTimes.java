package beltmark.signoff;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What the clock of the device said; a claim beside the time at which the server stored the record.
 *
 * @param entered when the form was filled in, in the field; null when the device did not say
 * @param signed when the PIN was sent; null when the device did not say
 */
public record DeviceTimes(
        @Nullable Instant entered, @Nullable Instant signed) {

    /** The device did not say. */
    public static final DeviceTimes UNSAID = new DeviceTimes(null, null);
}
