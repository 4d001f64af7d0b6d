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

    record PartJson(String id, String verdict, List<BlankJson> blanks) {

        static PartJson of(Part part, Map<String, String> typed, PartGrade grade, Words words) {
            List<BlankJson> blanks = new ArrayList<>();
            grade.grades()
                    .forEach((blank, judged) ->
                            blanks.add(BlankJson.of(part, blank, typed.getOrDefault(blank, ""), judged, words)));
            return new PartJson(part.id(), grade.worst().id(), blanks);
        }
    }

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record BlankJson(
            String id,
            String typed,
            @Nullable String read,
            String verdict,
            @Nullable String slip,
            @Nullable String says,
            @Nullable String why) {

        static BlankJson of(Part part, String blank, String typed, Grade grade, Words words) {
            String slip = grade.slip();
            return new BlankJson(
                    blank,
                    typed,
                    grade.answer() == null ? null : told(grade.answer(), words),
                    grade.verdict().id(),
                    slip,
                    slip == null ? null : words.say("problem.slip." + part.id() + "." + slip),
                    grade.unreadable() == null ? null : grade.unreadable().id());
        }

        private static String told(Answer answer, Words words) {
            return answer instanceof Answer.OfLength length
                    ? words.length(length.length())
                    : ((Answer.OfChoice) answer).option();
        }
    }
}
