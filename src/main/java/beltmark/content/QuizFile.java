package beltmark.content;

import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Quiz;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the file of a quiz that asks everybody the same questions. */
final class QuizFile {

    private QuizFile() {}

    /**
     * What such a file holds.
     *
     * @param quiz the quiz
     * @param questions its questions as questions of the bank
     */
    record Fixed(Quiz quiz, List<BankQuestion> questions) {

        Fixed {
            questions = List.copyOf(questions);
        }
    }

    /**
     * Reads a quiz.
     *
     * @param file the file
     * @param reader reads its questions
     * @param faults where faults are added
     * @return the quiz, or empty when the file has a fault
     */
    static Optional<Fixed> read(ContentFile file, QuestionFields reader, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        String id = fields.text("id");
        if (!file.name().equals(id + ".yaml")) {
            fields.faultAt("id", "The id must be the file's name without .yaml.");
        }
        int version = fields.whole("version");
        int passPercent = fields.whole("passPercent");
        List<BankQuestion> questions = new ArrayList<>();
        for (Fields question : fields.list("questions")) {
            reader.read(question, question.text("topic")).ifPresent(questions::add);
        }
        return fields.build(() -> new Fixed(
                new Quiz(
                        id,
                        version,
                        passPercent,
                        questions.stream().map(BankQuestion::question).toList()),
                questions));
    }
}
