package beltmark.demo;

import beltmark.core.lockout.Answer;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.demo.DemoYear.Sat;
import beltmark.lockout.Lockout;
import beltmark.lockout.Sitter;
import beltmark.lockout.Sitting;
import beltmark.lockout.Wording;
import beltmark.people.People;
import beltmark.texts.Words;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Sits the lockout quiz as somebody did. */
public final class DemoQuiz {

    private static final String QUIZ = "lockout";

    private final People people;
    private final Lockout lockout;
    private final Wording wording;

    /**
     * @param people who there is
     * @param lockout the feature, with the demo's clock
     * @param words the language it was sat in
     */
    public DemoQuiz(People people, Lockout lockout, Words words) {
        this.people = people;
        this.lockout = lockout;
        this.wording = new Wording(words);
    }

    void play(Sat sat) {
        Visitor person = people.getVisitor(sat.who());
        Sitter sitter = new Sitter(person.personId(), person.crewId());
        long number =
                lockout.open(sitter, QUIZ, OperationId.fresh().value()).join().orElseThrow();
        Sitting sitting = lockout.findSitting(person.personId(), number).orElseThrow();
        for (int i = 1; i <= sitting.size(); i++) {
            Question question = sitting.question(i);
            Answer answer = answer(question, sat.misses().contains(question.id()));
            lockout.answer(
                            sitter,
                            number,
                            i,
                            answer,
                            wording,
                            OperationId.fresh().value())
                    .join();
        }
    }

    private static Answer answer(Question question, boolean missed) {
        if (question.kind() == QuestionKind.PUT_IN_ORDER) {
            List<String> order = new ArrayList<>(question.right());
            if (missed) {
                Collections.swap(order, 0, 1);
            }
            return Answer.ofOrder(order);
        }
        return Answer.ofChosen(missed ? wrong(question) : question.right());
    }

    private static List<String> wrong(Question question) {
        return question.options().stream()
                .filter(option -> !question.right().contains(option))
                .limit(1)
                .toList();
    }
}
