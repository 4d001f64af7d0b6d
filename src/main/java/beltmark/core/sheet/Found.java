package beltmark.core.sheet;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * One quantity of a sheet: what was found, or why nothing was. A refused quantity does not hide the others.
 *
 * @param <T> what was asked for
 * @param solution what was found; null when it was refused
 * @param refusal why not; null when it was found. What builds on a refused quantity carries the very same refusal
 */
public record Found<T>(
        @Nullable Solution<T> solution, @Nullable Refused refusal) {

    /** {@return what a computation finds, or its refusal} */
    public static <T> Found<T> of(Supplier<Solution<T>> computation) {
        try {
            return new Found<>(computation.get(), null);
        } catch (Refused refused) {
            return new Found<>(null, refused);
        }
    }

    /** {@return what a further computation finds from this result, or this refusal} */
    public <U> Found<U> then(Function<T, Solution<U>> further) {
        Solution<T> base = solution;
        return base == null ? new Found<>(null, refusal) : of(() -> further.apply(base.result()));
    }

    /** {@return what a further computation finds from this result and another, or the first refusal of the two} */
    public <U, V> Found<V> and(Found<U> other, BiFunction<T, U, Solution<V>> further) {
        Solution<U> beside = other.solution;
        return solution == null || beside != null
                ? then(base ->
                        further.apply(base, Objects.requireNonNull(beside).result()))
                : new Found<>(null, other.refusal);
    }

    /** {@return the result, empty when it was refused} */
    public Optional<T> result() {
        return Optional.ofNullable(solution).map(Solution::result);
    }

    /** {@return the steps that led to the result, none when it was refused} */
    public List<Step> steps() {
        return solution == null ? List.of() : solution.steps();
    }

    /** {@return what is doubtful about the result} */
    public List<Warning> warnings() {
        return solution == null ? List.of() : solution.warnings();
    }
}
