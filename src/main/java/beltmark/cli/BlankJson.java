package beltmark.cli;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.MatchBlank;
import beltmark.core.problem.NumberBlank;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.SeveralBlank;
import beltmark.problem.BlankFields;
import beltmark.problem.ProblemWords;
import beltmark.texts.Words;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A blank with its right answer and slips. What is picked, put in order or matched is written the way {@code grade} reads
 * it: ids with blanks between, pairs as {@code thing:partner}.
 *
 * @param id the name within its part
 * @param kind length, number, choice, several, order or match
 * @param label what is asked
 * @param options the ids of what is picked from, put in order or given a partner
 * @param partners the ids of the partners of a match
 * @param right the right answer as it is typed
 * @param rightMm a right length in millimetres
 * @param toleranceMm how far off a length may be
 * @param plausibleMm the least and the most that a length can be
 * @param unit the unit of the amounts below
 * @param rightAmount a right number
 * @param tolerance how far off the number may be
 * @param plausible the least and the most that the number can be
 * @param slips the known wrong ways
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record BlankJson(
        String id,
        String kind,
        String label,
        @Nullable List<String> options,
        @Nullable List<String> partners,
        String right,
        @Nullable Double rightMm,
        @Nullable Double toleranceMm,
        @Nullable List<Double> plausibleMm,
        @Nullable String unit,
        @Nullable Double rightAmount,
        @Nullable Double tolerance,
        @Nullable List<Double> plausible,
        List<SlipJson> slips) {

    static BlankJson of(Part part, Blank blank, Words words) {
        LengthBlank length = blank instanceof LengthBlank own ? own : null;
        NumberBlank number = blank instanceof NumberBlank own ? own : null;
        return new BlankJson(
                blank.id(),
                BlankFields.kind(blank),
                new ProblemWords(words).label(part, blank),
                options(blank),
                blank instanceof MatchBlank match ? match.partners() : null,
                typed(blank, blank.right(), words),
                length == null ? null : Double.valueOf(length.rightLength().millimetres()),
                length == null ? null : Double.valueOf(length.tolerance().millimetres()),
                length == null
                        ? null
                        : List.of(
                                length.plausible().from().millimetres(),
                                length.plausible().to().millimetres()),
                number == null ? null : number.units().metric().symbol(),
                number == null ? null : Double.valueOf(number.rightAmount()),
                number == null ? null : Double.valueOf(number.tolerance().around(number.rightAmount())),
                number == null ? null : List.of(number.from(), number.to()),
                blank.wrongAnswers().stream()
                        .map(wrong -> SlipJson.of(part, blank, wrong, words))
                        .toList());
    }

    private static @Nullable List<String> options(Blank blank) {
        if (blank instanceof ChoiceBlank choice) {
            return choice.options();
        }
        if (blank instanceof SeveralBlank several) {
            return several.options();
        }
        if (blank instanceof OrderBlank order) {
            return order.items();
        }
        return blank instanceof MatchBlank match ? match.things() : null;
    }

    /** {@return an answer the way it would be typed} */
    static String typed(Blank blank, Answer answer, Words words) {
        if (answer instanceof Answer.OfChoice choice) {
            return choice.option();
        }
        if (answer instanceof Answer.OfSeveral several) {
            return String.join(" ", new TreeSet<>(several.options()));
        }
        if (answer instanceof Answer.OfOrder order) {
            return String.join(" ", order.items());
        }
        return answer instanceof Answer.OfMatch match
                ? match.partners().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(pair -> pair.getKey() + ":" + pair.getValue())
                        .collect(Collectors.joining(" "))
                : new ProblemWords(words).told(blank, answer);
    }

    /**
     * A slip, what it leads to, and what is said of it.
     *
     * @param id the slip's id
     * @param value what it leads to, as it would be typed
     * @param mm a length in millimetres
     * @param amount a number in the unit of the blank
     * @param says what is said of it
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record SlipJson(
            String id,
            String value,
            @Nullable Double mm,
            @Nullable Double amount,
            String says) {

        static SlipJson of(Part part, Blank blank, Blank.WrongAnswer wrong, Words words) {
            return new SlipJson(
                    wrong.slip(),
                    typed(blank, wrong.answer(), words),
                    wrong.answer() instanceof Answer.OfLength own
                            ? Double.valueOf(own.length().millimetres())
                            : null,
                    wrong.answer() instanceof Answer.OfNumber own ? Double.valueOf(own.amount()) : null,
                    new ProblemWords(words).slip(part.id(), wrong.slip()));
        }
    }
}
