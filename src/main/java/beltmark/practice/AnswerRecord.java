package beltmark.practice;

import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.units.Length;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * The body of a {@code practice.answer}: the problem as it was shown with its right answers, and what was answered, so
 * that the answer can be judged again without the generator.
 *
 * @param shown the problem
 * @param part the part's id
 * @param unit the unit of lengths typed without one
 * @param figures what was typed and how it was judged
 * @param asked the right answers and slips of the part at that time, by blank
 */
public record AnswerRecord(Shown shown, String part, String unit, List<Figure> figures, Map<String, Asked> asked) {

    static AnswerRecord of(Problem problem, Part part, String unit, List<Figure> figures) {
        Map<String, Asked> asked = new TreeMap<>();
        part.blanks().forEach(blank -> asked.put(blank.id(), Asked.of(blank)));
        return new AnswerRecord(Shown.of(problem), part.id(), unit, figures, asked);
    }

    /**
     * The problem in its numbers.
     *
     * @param family the family's id
     * @param version the family's version
     * @param code the code it was drawn from
     * @param card the hardware card's id
     * @param cardVersion the hardware card's version
     * @param tip the tip on the blade
     * @param blade the length of the blade
     * @param beltMarks the belt marks
     * @param surroundings what limits the space
     * @param mountedHigh how far above its mount mark the tensioner was fixed
     * @param splice the height of the splice
     */
    public record Shown(
            String family,
            int version,
            String code,
            String card,
            int cardVersion,
            String tip,
            Length blade,
            Sides beltMarks,
            Surroundings surroundings,
            Length mountedHigh,
            Length splice) {

        static Shown of(Problem problem) {
            Situation situation = problem.situation();
            return new Shown(
                    problem.family(),
                    problem.version(),
                    problem.code().text(),
                    situation.card().id(),
                    situation.card().version(),
                    situation.tip().id(),
                    situation.blade(),
                    situation.beltMarks(),
                    situation.surroundings(),
                    situation.mountedHigh(),
                    situation.splice());
        }
    }

    /**
     * What was right for one blank, and which slips were known.
     *
     * @param length the right length, for a length
     * @param tolerance how far off it could be, for a length
     * @param option the right option, for a choice
     * @param slips the values of the slips, for a length
     */
    public record Asked(
            @Nullable Length length,
            @Nullable Length tolerance,
            @Nullable String option,
            Map<String, Length> slips) {

        static Asked of(Blank blank) {
            if (blank instanceof LengthBlank length) {
                Map<String, Length> slips = new TreeMap<>();
                length.slips().forEach(slip -> slips.put(slip.id(), slip.value()));
                return new Asked(length.rightLength(), length.tolerance(), null, slips);
            }
            return new Asked(null, null, ((ChoiceBlank) blank).rightOption(), Map.of());
        }
    }
}
