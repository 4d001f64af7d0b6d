package beltmark.content;

import beltmark.core.lockout.BankQuestion;
import java.util.ArrayList;
import java.util.List;

/** Reads a file of the question bank: the questions of one topic. */
final class BankFile {

    private BankFile() {}

    /**
     * Reads a topic.
     *
     * @param file the file; its name is the topic
     * @param reader reads its questions
     * @param faults where faults are added
     * @return the questions, without those that have a fault
     */
    static List<BankQuestion> read(ContentFile file, QuestionFields reader, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        String topic = fields.text("topic");
        if (!file.name().equals(topic + ".yaml")) {
            fields.faultAt("topic", "The topic must be the file's name without .yaml.");
        }
        List<BankQuestion> questions = new ArrayList<>();
        for (Fields question : fields.list("questions")) {
            reader.read(question, topic).ifPresent(questions::add);
        }
        fields.build(() -> topic);
        return questions;
    }
}
