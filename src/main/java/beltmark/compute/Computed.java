package beltmark.compute;

import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What came out for a line.
 *
 * @param figures the figures by name; the first is the one that is meant when one speaks of the quantity
 * @param steps that led to them
 * @param warnings what is doubtful
 */
record Computed(Map<String, Quantity> figures, List<Step> steps, List<Warning> warnings) {

    static <T> Computed of(Calculation<T> calculation, Solution<T> solution) {
        Map<String, Quantity> figures = new LinkedHashMap<>();
        for (Output<T> output : calculation.outputs()) {
            Quantity figure = output.of().apply(solution.result());
            if (figure != null) {
                figures.put(output.name(), figure);
            }
        }
        return new Computed(figures, solution.steps(), solution.warnings());
    }
}
