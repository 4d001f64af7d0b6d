package beltmark.cli;

import beltmark.core.grading.Grade;
import beltmark.core.grading.PartGrade;
import beltmark.core.problem.Answer;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.units.LengthUnit;
import beltmark.texts.Words;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The verdicts on the answers to one problem.
 *
 * @param family the family's id
 * @param version the family's version
 * @param code the code, as it is kept
 * @param parts the verdicts, one for each answered part
 */
record GradeJson(String family, int version, String code, List<PartJson> parts) {

    /** Grades the parts that are answered, in order; an own figure carries into the parts after it. */
    static GradeJson of(Problem problem, Map<String, Map<String, String>> answers, LengthUnit unit, Words words) {
        List<PartJson> parts = new ArrayList<>();
        OwnFigures own = OwnFigures.NONE;
        for (Part part : problem.parts()) {
            Map<String, String> typed = answers.get(part.id());
            if (typed != null) {
                PartGrade grade = PartGrade.of(part, typed, unit, own);
                parts.add(PartJson.of(part, typed, grade, words));
                own = grade.addTo(own, part);
            }
        }
        return new GradeJson(problem.family(), problem.version(), problem.code().text(), parts);
    }

    record PartJson(String id, String verdict, List<JudgedJson> blanks) {

        static PartJson of(Part part, Map<String, String> typed, PartGrade grade, Words words) {
            List<JudgedJson> blanks = new ArrayList<>();
            grade.grades()
                    .forEach((blank, judged) ->
                            blanks.add(JudgedJson.of(part, blank, typed.getOrDefault(blank, ""), judged, words)));
            return new PartJson(part.id(), grade.worst().id(), blanks);
        }
    }

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record JudgedJson(
            String id,
            String typed,
            @Nullable String read,
            String verdict,
            @Nullable String slip,
            @Nullable String says,
            @Nullable String why) {

        private static String told(Part part, String blank, Answer answer, Words words) {
            return part.blanks().stream()
                    .filter(known -> known.id().equals(blank))
                    .map(known -> BlankJson.typed(known, answer, words))
                    .findFirst()
                    .orElse("");
        }

        static JudgedJson of(Part part, String blank, String typed, Grade grade, Words words) {
            String slip = grade.slip();
            return new JudgedJson(
                    blank,
                    typed,
                    grade.answer() == null ? null : told(part, blank, grade.answer(), words),
                    grade.verdict().id(),
                    slip,
                    slip == null ? null : words.say("problem.slip." + part.id() + "." + slip),
                    grade.unreadable() == null ? null : grade.unreadable().id());
        }
    }
}
