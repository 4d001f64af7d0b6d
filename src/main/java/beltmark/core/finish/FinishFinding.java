package beltmark.core.finish;

import beltmark.core.units.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * One reading at the blade against what is wanted.
 *
 * @param reading what was read
 * @param wanted what is wanted; for a splice the most that can pass
 * @param measured what was read
 * @param tolerance how far off it may be, either way; null where there is no such thing
 * @param isWithin whether it is as it should be
 */
public record FinishFinding(
        FinishReading reading,
        Quantity wanted,
        Quantity measured,
        @Nullable Quantity tolerance,
        boolean isWithin) {}
