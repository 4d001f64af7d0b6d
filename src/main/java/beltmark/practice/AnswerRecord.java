package beltmark.practice;

import beltmark.core.problem.Blank;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
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
 * @param paperPack the number of the paper pack it was worked on, or null on screen
 */
public record AnswerRecord(
        Shown shown,
        String part,
        String unit,
        List<Figure> figures,
        Map<String, Asked> asked,
        @Nullable Long paperPack) {

    static AnswerRecord of(Problem problem, Part part, Worker worker, List<Figure> figures) {
        Map<String, Asked> asked = new TreeMap<>();
        part.blanks().forEach(blank -> asked.put(blank.id(), Asked.of(blank)));
        return new AnswerRecord(
                Shown.of(problem, part), part.id(), worker.graduation().unit().symbol(), figures, asked, worker.pack());
    }

    /**
     * The problem in its numbers.
     *
     * @param family the family's id
     * @param version the family's version
     * @param code the code it was drawn from
     * @param card the hardware card's id, or null
     * @param cardVersion the hardware card's version, or null
     * @param facts the drawn numbers, with their unit
     * @param told what was told with this part and the problem
     */
    public record Shown(
            String family,
            int version,
            String code,
            @Nullable String card,
            @Nullable Integer cardVersion,
            Map<String, String> facts,
            Map<String, String> told) {

        static Shown of(Problem problem, Part part) {
            HardwareCard card = problem.scene().findCard().orElse(null);
            Map<String, String> facts = new TreeMap<>();
            problem.scene().facts().forEach((name, value) -> facts.put(name, exact(value)));
            Map<String, String> told = new TreeMap<>();
            for (List<Given> givens : List.of(problem.givens(), part.givens())) {
                givens.forEach(given -> told.put(given.id(), exact(given.value())));
            }
            return new Shown(
                    problem.family(),
                    problem.version(),
                    problem.code().text(),
                    card == null ? null : card.id(),
                    card == null ? null : Integer.valueOf(card.version()),
                    facts,
                    told);
        }

        private static String exact(Quantity value) {
            if (value instanceof Word word) {
                return word.key();
            }
            return value instanceof Length length
                    ? length.nanometres() + " nm"
                    : (value.amount() + " " + value.unit()).strip();
        }
    }

    /**
     * What was right for one blank, and which slips were known.
     *
     * @param length the right length, for a length
     * @param tolerance how far off it could be, for a length
     * @param amount the right amount, for a number
     * @param unit the unit of the amount
     * @param within how far off the amount could be
     * @param option the right option, or all right ones with blanks between
     * @param slips what the known slips lead to, by slip
     */
    public record Asked(
            @Nullable Length length,
            @Nullable Length tolerance,
            @Nullable Double amount,
            @Nullable String unit,
            @Nullable Double within,
            @Nullable String option,
            Map<String, Figure> slips) {

        static Asked of(Blank blank) {
            Map<String, Figure> slips = new TreeMap<>();
            blank.wrongAnswers().forEach(wrong -> slips.put(wrong.slip(), Figure.ofSlip(blank.id(), wrong)));
            if (blank instanceof LengthBlank length) {
                return new Asked(length.rightLength(), length.tolerance(), null, null, null, null, slips);
            }
            if (blank instanceof NumberBlank number) {
                double within = number.tolerance().around(number.rightAmount());
                String unit = number.units().metric().symbol();
                return new Asked(null, null, number.rightAmount(), unit, within, null, slips);
            }
            return new Asked(null, null, null, null, null, Picked.of(blank.right()), slips);
        }
    }
}
