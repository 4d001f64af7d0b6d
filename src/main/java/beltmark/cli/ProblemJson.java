package beltmark.cli;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Situation;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import beltmark.texts.Words;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A problem with everything a trainer wants to see of it, the right answers and slips too.
 *
 * @param family the family's id
 * @param version the family's version
 * @param code the code, as it is kept
 * @param card the hardware card's id
 * @param cardVersion the hardware card's version
 * @param situation the numbers behind it
 * @param givens what is told for the whole problem
 * @param parts what is asked
 */
record ProblemJson(
        String family,
        int version,
        String code,
        String card,
        int cardVersion,
        SituationJson situation,
        List<GivenJson> givens,
        List<PartJson> parts) {

    static ProblemJson of(Problem problem, Words words) {
        Situation situation = problem.situation();
        return new ProblemJson(
                problem.family(),
                problem.version(),
                problem.code().text(),
                situation.card().id(),
                situation.card().version(),
                SituationJson.of(situation),
                allOf(problem.givens(), words),
                problem.parts().stream().map(part -> PartJson.of(part, words)).toList());
    }

    private static List<GivenJson> allOf(List<Given> givens, Words words) {
        return givens.stream().map(given -> GivenJson.of(given, words)).toList();
    }

    /** The numbers of a situation, heights in millimetres. */
    record SituationJson(
            String tip,
            double bladeMm,
            SidesJson beltMarksMm,
            double floorMm,
            double roofMm,
            List<ReachJson> obstaclesMm,
            double mountedHighMm,
            double spliceMm) {

        static SituationJson of(Situation situation) {
            return new SituationJson(
                    situation.tip().id(),
                    situation.blade().millimetres(),
                    SidesJson.of(situation.beltMarks()),
                    situation.surroundings().floor().millimetres(),
                    situation.surroundings().roof().millimetres(),
                    situation.surroundings().obstacles().stream()
                            .map(ReachJson::of)
                            .toList(),
                    situation.mountedHigh().millimetres(),
                    situation.splice().millimetres());
        }
    }

    record SidesJson(double left, double right) {

        static SidesJson of(Sides sides) {
            return new SidesJson(sides.left().millimetres(), sides.right().millimetres());
        }
    }

    record ReachJson(double low, double high) {

        static ReachJson of(Reach reach) {
            return new ReachJson(reach.low().millimetres(), reach.high().millimetres());
        }
    }

    /** A value as a person reads it, and in millimetres where it is a length. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record GivenJson(
            String id, String label, String value, @Nullable Double mm) {

        static GivenJson of(Given given, Words words) {
            Quantity value = given.value();
            return new GivenJson(
                    given.id(),
                    words.say("problem.given." + given.id()),
                    words.quantity(value),
                    value instanceof Word ? null : Double.valueOf(value.amount()));
        }
    }

    record PartJson(
            String id, String title, String ask, List<GivenJson> givens, List<BlankJson> blanks, List<String> steps) {

        static PartJson of(Part part, Words words) {
            return new PartJson(
                    part.id(),
                    words.say("problem.part." + part.id() + ".title"),
                    words.say("problem.part." + part.id() + ".ask"),
                    allOf(part.givens(), words),
                    part.blanks().stream()
                            .map(blank -> BlankJson.of(part, blank, words))
                            .toList(),
                    part.steps().stream()
                            .map(step -> words.say("setup.step." + step.id(), step.values()))
                            .toList());
        }
    }

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record BlankJson(
            String id,
            String kind,
            String label,
            @Nullable List<String> options,
            String right,
            @Nullable Double rightMm,
            @Nullable Double toleranceMm,
            @Nullable List<Double> plausibleMm,
            List<SlipJson> slips) {

        static BlankJson of(Part part, Blank blank, Words words) {
            String label = words.say("problem.blank." + part.path(blank));
            return blank instanceof LengthBlank length
                    ? of(part, length, label, words)
                    : of(part, (ChoiceBlank) blank, label, words);
        }

        private static BlankJson of(Part part, LengthBlank blank, String label, Words words) {
            return new BlankJson(
                    blank.id(),
                    "length",
                    label,
                    null,
                    words.length(blank.rightLength()),
                    blank.rightLength().millimetres(),
                    blank.tolerance().millimetres(),
                    List.of(
                            blank.plausible().from().millimetres(),
                            blank.plausible().to().millimetres()),
                    blank.slips().stream()
                            .map(slip -> SlipJson.of(part, slip.id(), new Answer.OfLength(slip.value()), words))
                            .toList());
        }

        private static BlankJson of(Part part, ChoiceBlank blank, String label, Words words) {
            return new BlankJson(
                    blank.id(),
                    "choice",
                    label,
                    blank.options(),
                    blank.rightOption(),
                    null,
                    null,
                    null,
                    blank.options().stream()
                            .filter(blank.slips()::containsKey)
                            .map(option -> SlipJson.of(
                                    part, blank.slips().getOrDefault(option, ""), new Answer.OfChoice(option), words))
                            .toList());
        }
    }

    /** A slip, what it leads to, and what is said of it. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record SlipJson(String id, String value, @Nullable Double mm, String says) {

        static SlipJson of(Part part, String slip, Answer value, Words words) {
            Length length = value instanceof Answer.OfLength own ? own.length() : null;
            String text = value instanceof Answer.OfChoice own ? own.option() : "";
            return new SlipJson(
                    slip,
                    length == null ? text : words.length(length),
                    length == null ? null : Double.valueOf(length.millimetres()),
                    words.say("problem.slip." + part.id() + "." + slip));
        }
    }
}
