package beltmark.content;

import beltmark.core.lockout.Quiz;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The quizzes shipped with the program. */
public final class QuizContent {

    private static final String LOCKOUT = "content/quizzes/lockout.yaml";

    private QuizContent() {}

    /**
     * Reads the lockout quiz.
     *
     * @param textKeys every key that has a text in every language
     * @return the quiz
     * @throws ContentFaults with every fault found
     */
    public static Quiz lockout(Set<String> textKeys) {
        List<ContentFault> faults = new ArrayList<>();
        ContentFile file = ContentFile.list("content/quizzes").stream()
                .filter(found -> found.path().equals(LOCKOUT))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the program was built without " + LOCKOUT));
        Optional<Quiz> quiz = QuizFile.read(file, textKeys, faults);
        return quiz.orElseThrow(() -> new ContentFaults(faults));
    }
}
