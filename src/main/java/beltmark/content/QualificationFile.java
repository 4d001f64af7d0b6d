package beltmark.content;

import beltmark.core.problem.ProblemFamily;
import beltmark.core.qualification.CleanNeed;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.setup.HardwareCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the file of a qualification rule. */
final class QualificationFile {

    private QualificationFile() {}

    /**
     * Reads a rule.
     *
     * @param file the file
     * @param cards the hardware cards, one of which it must name
     * @param families the problem families it may name
     * @param faults where faults are added
     * @return the rule, or empty when the file has a fault
     */
    static Optional<QualificationRule> read(
            ContentFile file, List<HardwareCard> cards, List<ProblemFamily> families, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        String id = fields.text("id");
        if (!file.name().equals(id + ".yaml")) {
            fields.faultAt("id", "The id must be the file's name without .yaml.");
        }
        fields.text("source");
        int version = fields.whole("version");
        String card = fields.text("card");
        if (cards.stream().noneMatch(known -> known.id().equals(card))) {
            fields.faultAt("card", "There is no hardware card " + card + ".");
        }
        List<CleanNeed> clean = clean(fields, families);
        Fields quiz = fields.fields("quiz");
        String quizId = quiz.text("id");
        int quizDays = quiz.whole("countsForDays");
        quiz.build(() -> quizId);
        Fields demonstrations = fields.fields("demonstrations");
        int count = demonstrations.whole("count");
        int lifeDays = demonstrations.whole("countsForDays");
        demonstrations.build(() -> count);
        int dueSoonDays = fields.whole("dueSoonDays");
        return fields.build(
                () -> new QualificationRule(id, version, card, clean, quizId, quizDays, count, lifeDays, dueSoonDays));
    }

    private static List<CleanNeed> clean(Fields fields, List<ProblemFamily> families) {
        List<CleanNeed> clean = new ArrayList<>();
        for (Fields need : fields.list("clean")) {
            String family = need.text("family");
            int count = need.whole("count");
            if (families.stream().noneMatch(known -> known.id().equals(family))) {
                need.faultAt("family", "There is no problem family " + family + ".");
            }
            if (clean.stream().anyMatch(other -> other.family().equals(family))) {
                need.faultAt("family", "The family " + family + " is named twice.");
            }
            need.build(() -> new CleanNeed(family, count)).ifPresent(clean::add);
        }
        return clean;
    }
}
