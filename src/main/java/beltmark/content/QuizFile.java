package beltmark.content;

import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Quiz;
import beltmark.core.lockout.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Reads the file of a quiz and sees that every question has its source, its key and its texts. */
final class QuizFile {

    /** The one mark a question may rest on: the paragraph itself was read. */
    private static final List<String> MARKS = List.of("SAW");

    private final String topic;
    private final Set<String> textKeys;
    private final Set<String> ids = new HashSet<>();

    private QuizFile(String topic, Set<String> textKeys) {
        this.topic = topic;
        this.textKeys = textKeys;
    }

    /**
     * Reads a quiz.
     *
     * @param file the file; its wording is in the text file of the same name
     * @param textKeys every key that has a text in every language
     * @param faults where faults are added
     * @return the quiz, or empty when the file has a fault
     */
    static Optional<Quiz> read(ContentFile file, Set<String> textKeys, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        String id = fields.text("id");
        if (!file.name().equals(id + ".yaml")) {
            fields.faultAt("id", "The id must be the file's name without .yaml.");
        }
        int version = fields.whole("version");
        int passPercent = fields.whole("passPercent");
        QuizFile reader = new QuizFile(id, textKeys);
        List<Question> questions = new ArrayList<>();
        for (Fields question : fields.list("questions")) {
            reader.question(question).ifPresent(questions::add);
        }
        return fields.build(() -> new Quiz(id, version, passPercent, questions));
    }

    private Optional<Question> question(Fields fields) {
        String id = fields.text("id");
        if (!ids.add(id)) {
            fields.faultAt("id", "There is another question " + id + " above.");
        }
        QuestionKind kind = fields.oneOf("kind", List.of(QuestionKind.values()), QuestionKind::id);
        boolean critical = fields.yes("critical");
        List<String> options = fields.texts("options");
        List<String> right = fields.texts("right");
        checkKey(fields, kind, options, right);
        checkTexts(fields, id, options);
        fields.oneOf("mark", MARKS, Function.identity());
        List<String> facts = fields.texts("facts");
        String paragraph = fields.text("source");
        List<String> ruleSets = fields.texts("rules");
        ruleSets.forEach(rules -> checkText(fields, "rules", topic + ".rules." + rules));
        return fields.build(
                () -> new Question(id, kind, critical, options, right, new Source(facts, paragraph, ruleSets)));
    }

    private static void checkKey(Fields fields, QuestionKind kind, List<String> options, List<String> right) {
        if (!options.isEmpty() && options.size() < Question.fewest(kind)) {
            fields.faultAt("options", "A question " + kind.id() + " needs at least " + Question.fewest(kind) + ".");
        }
        for (String option : right) {
            if (!options.contains(option)) {
                fields.faultAt("right", "The key names " + option + ", which is not among the options.");
            }
        }
        if (!right.isEmpty() && !Question.fits(kind, options.size(), right.size())) {
            fields.faultAt(
                    "right",
                    "A key of " + right.size() + " of " + options.size() + " does not fit " + kind.id()
                            + ": choice has 1, several-of at least 1, put-in-order has all.");
        }
    }

    private void checkTexts(Fields fields, String id, List<String> options) {
        String question = topic + ".question." + id;
        for (String part : List.of("name", "ask", "why")) {
            checkText(fields, "id", question + "." + part);
        }
        for (String option : options) {
            checkText(fields, "options", question + ".option." + option);
        }
    }

    private void checkText(Fields fields, String name, String key) {
        if (!textKeys.contains(key)) {
            fields.faultAt(name, "There is no text " + key + ".");
        }
    }
}
