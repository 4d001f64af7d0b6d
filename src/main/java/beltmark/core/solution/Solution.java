package beltmark.core.solution;

import java.util.ArrayList;
import java.util.List;

/**
 * What a computation found, the steps that led to it, and what is doubtful about it.
 *
 * @param <T> what was asked for
 * @param result what was found
 * @param steps in the order in which one would work them by hand
 * @param warnings named doubts; empty when there are none
 */
public record Solution<T>(T result, List<Step> steps, List<Warning> warnings) {

    public Solution {
        steps = List.copyOf(steps);
        warnings = List.copyOf(warnings);
    }

    /** {@return a result with its steps and no doubts} */
    public static <T> Solution<T> of(T result, Step... steps) {
        return new Solution<>(result, List.of(steps), List.of());
    }

    /** {@return this with a warning added when {@code doubtful}} */
    public Solution<T> warnIf(boolean doubtful, Warning warning) {
        if (!doubtful) {
            return this;
        }
        List<Warning> more = new ArrayList<>(warnings);
        more.add(warning);
        return new Solution<>(result, steps, more);
    }

    /** {@return this with the steps and warnings of what it builds on put in front} */
    public Solution<T> after(Solution<?> earlier) {
        List<Step> allSteps = new ArrayList<>(earlier.steps());
        allSteps.addAll(steps);
        List<Warning> allWarnings = new ArrayList<>(earlier.warnings());
        allWarnings.addAll(warnings);
        return new Solution<>(result, allSteps, allWarnings);
    }

    /** {@return this with the steps and warnings of a computation that goes on from it put behind} */
    public Solution<T> followedBy(Solution<?> later) {
        Solution<?> joined = later.after(this);
        return new Solution<>(result, joined.steps, joined.warnings);
    }

    /** {@return this without its doubts, where a later computation judges them again} */
    public Solution<T> withoutWarnings() {
        return new Solution<>(result, steps, List.of());
    }
}
