package beltmark.lockout;

import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Blueprint;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.Quiz;
import beltmark.recordbook.RecordBook;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** Makes the quiz a sitting asks: drawn from the bank under the site's rule sets, or with fixed questions. */
final class Draws {

    private final Papers papers;
    private final SiteProcedures procedures;
    private final DrawStore store = new DrawStore();

    Draws(Papers papers, RecordBook book) {
        this.papers = papers;
        this.procedures = new SiteProcedures(book);
    }

    /** {@return the ids of what can be sat, the paper for authorized employees first} */
    List<String> listQuizzes() {
        return papers.ids();
    }

    /** {@return the version in force of a quiz} */
    int version(String quiz) {
        return papers.findBlueprint(quiz)
                .map(Blueprint::version)
                .orElseGet(() -> papers.whole(quiz).version());
    }

    /** {@return a new quiz, the same for the same seed as long as nothing was switched; empty with too few questions} */
    Optional<Quiz> draw(Handle handle, String quiz, long seed) {
        Optional<Blueprint> plan = papers.findBlueprint(quiz);
        if (plan.isEmpty()) {
            return Optional.of(papers.whole(quiz));
        }
        List<Question> drawn = plan.get().draw(listAllowed(handle), seed);
        return drawn.size() < plan.get().fewest() ? Optional.empty() : Optional.of(quiz(plan.get(), drawn));
    }

    /** {@return whether the questions of a quiz differ from sitting to sitting} */
    boolean isDrawn(String quiz) {
        return papers.findBlueprint(quiz).isPresent();
    }

    /** {@return the number of the next sitting of a person, from 0} */
    long countSittings(Handle handle, long person, String quiz) {
        return store.countSittings(handle, person, quiz);
    }

    /** Keeps what a sitting asks. */
    void keep(Handle handle, long sitting, Quiz quiz) {
        if (isDrawn(quiz.id())) {
            store.addDrawn(
                    handle, sitting, quiz.questions().stream().map(Question::id).toList());
        }
    }

    /** {@return the quiz a sitting was opened with, also of an earlier version; empty when it is known no more} */
    Optional<Quiz> find(Handle handle, SittingRow row) {
        Optional<List<String>> drawn = store.findDrawn(handle, row.id());
        if (drawn.isEmpty()) {
            return papers.findFixed(row.quiz(), row.version());
        }
        List<Question> questions = drawn.get().stream()
                .map(id -> findQuestion(handle, id))
                .flatMap(Optional::stream)
                .toList();
        return questions.size() < drawn.get().size()
                ? Optional.empty()
                : papers.findBlueprint(row.quiz())
                        .map(plan -> new Quiz(plan.id(), row.version(), plan.passPercent(), questions));
    }

    private Optional<Question> findQuestion(Handle handle, String id) {
        return papers.bank().find(id).map(BankQuestion::question).or(() -> procedures.find(handle, id));
    }

    private List<BankQuestion> listAllowed(Handle handle) {
        List<String> ruleSets = store.findRuleSets(handle).orElse(papers.ruleSets());
        return papers.bank().with(procedures.list(handle)).allowed(Set.copyOf(ruleSets), store.getSwitches(handle));
    }

    private static Quiz quiz(Blueprint plan, List<Question> questions) {
        return new Quiz(plan.id(), plan.version(), plan.passPercent(), questions);
    }
}
