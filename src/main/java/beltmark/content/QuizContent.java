package beltmark.content;

import beltmark.core.lockout.Bank;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Quiz;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The quizzes shipped with the program. */
public final class QuizContent {

    private static final String FOLDER = "content/quizzes";
    private static final String BANK = FOLDER + "/bank";
    private static final String PAPERS = "papers.yaml";
    private static final String TEXTS = "lockout";

    private QuizContent() {}

    /**
     * Reads the question bank, the plans of the papers and the quizzes with fixed questions.
     *
     * @param textKeys every key that has a text in every language
     * @return what can be sat
     * @throws ContentFaults with every fault found
     */
    public static Papers papers(Set<String> textKeys) {
        List<ContentFault> faults = new ArrayList<>();
        QuestionFields reader = new QuestionFields(TEXTS, textKeys);
        List<BankQuestion> questions = new ArrayList<>();
        List<Quiz> fixed = new ArrayList<>();
        for (ContentFile file : ContentFile.list(FOLDER)) {
            if (file.path().startsWith(BANK + "/")) {
                questions.addAll(BankFile.read(file, reader, faults));
            } else if (!file.name().equals(PAPERS)) {
                QuizFile.read(file, reader, faults).ifPresent(read -> {
                    fixed.add(read.quiz());
                    questions.addAll(read.questions());
                });
            }
        }
        PapersFile plans = PapersFile.read(plansFile(), points(questions), topics(questions), faults);
        if (!faults.isEmpty()) {
            throw new ContentFaults(faults);
        }
        return new Papers(new Bank(questions), plans.blueprints(), fixed, plans.ruleSets());
    }

    private static ContentFile plansFile() {
        return ContentFile.list(FOLDER).stream()
                .filter(found -> found.name().equals(PAPERS))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the program was built without " + PAPERS));
    }

    private static Set<String> points(List<BankQuestion> questions) {
        Set<String> points = new TreeSet<>();
        questions.stream()
                .map(BankQuestion::findPoint)
                .flatMap(Optional::stream)
                .forEach(points::add);
        return points;
    }

    private static Set<String> topics(List<BankQuestion> questions) {
        Set<String> topics = new TreeSet<>();
        questions.forEach(question -> topics.add(question.topic()));
        return topics;
    }
}
