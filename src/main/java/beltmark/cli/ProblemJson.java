package beltmark.cli;

import beltmark.core.problem.Given;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.Scene;
import beltmark.core.problem.setup.SetupScene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Situation;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import beltmark.problem.ExhibitView;
import beltmark.problem.ProblemWords;
import beltmark.texts.Words;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A problem with everything a trainer wants to see of it, the right answers and slips too.
 *
 * @param family the family's id
 * @param version the family's version
 * @param code the code, as it is kept
 * @param card the hardware card's id, or null where none plays a part
 * @param cardVersion the hardware card's version, or null
 * @param situation the numbers of a set-up, or null for another scene
 * @param facts the drawn numbers behind it
 * @param givens what is told for the whole problem
 * @param parts what is asked
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ProblemJson(
        String family,
        int version,
        String code,
        @Nullable String card,
        @Nullable Integer cardVersion,
        @Nullable SituationJson situation,
        Map<String, FactJson> facts,
        List<GivenJson> givens,
        List<PartJson> parts) {

    static ProblemJson of(Problem problem, Words words) {
        HardwareCard card = problem.scene().findCard().orElse(null);
        return new ProblemJson(
                problem.family(),
                problem.version(),
                problem.code().text(),
                card == null ? null : card.id(),
                card == null ? null : Integer.valueOf(card.version()),
                problem.scene() instanceof SetupScene scene ? SituationJson.of(scene.situation()) : null,
                FactJson.allOf(problem.scene()),
                allOf(problem.givens(), words),
                problem.parts().stream().map(part -> PartJson.of(part, words)).toList());
    }

    private static List<GivenJson> allOf(List<Given> givens, Words words) {
        return givens.stream().map(given -> GivenJson.of(given, words)).toList();
    }

    /** A drawn number and its unit, or a drawn word. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record FactJson(
            @Nullable Double amount, String unit, @Nullable String word) {

        static Map<String, FactJson> allOf(Scene scene) {
            Map<String, FactJson> facts = new LinkedHashMap<>();
            scene.facts().forEach((name, value) -> facts.put(name, of(value)));
            return facts;
        }

        private static FactJson of(Quantity value) {
            return value instanceof Word word
                    ? new FactJson(null, "", word.key())
                    : new FactJson(value.amount(), value.unit(), null);
        }
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
            String id,
            String label,
            String value,
            @Nullable Double mm,
            @Nullable Double amount,
            @Nullable String unit) {

        static GivenJson of(Given given, Words words) {
            Quantity value = given.value();
            return new GivenJson(
                    given.id(),
                    words.say("problem.given." + given.id()),
                    words.quantity(value),
                    value instanceof Length length ? Double.valueOf(length.millimetres()) : null,
                    value instanceof Word || value instanceof Length ? null : Double.valueOf(value.amount()),
                    value instanceof Word || value instanceof Length ? null : value.unit());
        }
    }

    /** A table, its cells as a person reads them. */
    record ExhibitJson(String id, String caption, List<String> columns, List<List<String>> rows) {

        static List<ExhibitJson> allOf(Part part, ProblemWords words) {
            List<ExhibitJson> exhibits = new ArrayList<>();
            for (ExhibitView view : words.exhibits(part)) {
                String id = part.exhibits().get(exhibits.size()).id();
                exhibits.add(new ExhibitJson(id, view.caption(), view.columns(), view.rows()));
            }
            return exhibits;
        }
    }

    record PartJson(
            String id,
            String title,
            String ask,
            List<GivenJson> givens,
            List<ExhibitJson> exhibits,
            List<BlankJson> blanks,
            List<String> steps) {

        static PartJson of(Part part, Words words) {
            ProblemWords told = new ProblemWords(words);
            return new PartJson(
                    part.id(),
                    told.title(part),
                    told.ask(part),
                    allOf(part.givens(), words),
                    ExhibitJson.allOf(part, told),
                    part.blanks().stream()
                            .map(blank -> BlankJson.of(part, blank, words))
                            .toList(),
                    told.steps(part));
        }
    }
}
