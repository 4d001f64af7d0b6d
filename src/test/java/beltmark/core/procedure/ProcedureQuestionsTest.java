package beltmark.core.procedure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.lockout.Answer;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Judge;
import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Question;
import beltmark.core.procedure.ProcedureCard.Energy;
import beltmark.core.procedure.ProcedureCard.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

class ProcedureQuestionsTest {

    private static final List<Point> POINTS = List.of(
            new Point("Disconnect", "electrical", "head", "start tried"),
            new Point("Air valve", "pneumatic", "tail", "gauge at zero"));

    @Test
    void asksForTheOrderThePointsAndTheProofs() {
        List<String> ids = ProcedureQuestions.of(card(POINTS, List.of("Stop", "Isolate", "Lock"))).stream()
                .map(BankQuestion::id)
                .toList();

        assertEquals(List.of("procedure.bora.3.order", "procedure.bora.3.points", "procedure.bora.3.proofs"), ids);
    }

    @Test
    void theStepsInTheirOrderAreRight() {
        Question order = question(0);

        assertEquals(Judgement.RIGHT, Judge.judge(order, Answer.ofOrder(List.of("a", "b", "c"))));
        assertEquals(Judgement.WRONG, Judge.judge(order, Answer.ofOrder(List.of("b", "a", "c"))));
    }

    @Test
    void buttonAndCordAreNoPoints() {
        Question points = question(1);

        assertEquals(Judgement.RIGHT, Judge.judge(points, Answer.ofChosen(List.of("a", "b"))));
        assertEquals(Judgement.WRONG, Judge.judge(points, Answer.ofChosen(List.of("a", "b", "pull-cord"))));
    }

    @Test
    void eachPointHasItsOwnProof() {
        Question proofs = question(2);

        assertEquals(Judgement.RIGHT, Judge.judge(proofs, Answer.ofChosen(List.of("a=k", "b=l"))));
        assertEquals(Judgement.WRONG, Judge.judge(proofs, Answer.ofChosen(List.of("a=l", "b=k"))));
    }

    @Test
    void proofsThatReadTheSameAreNotMatched() {
        List<Point> alike = List.of(POINTS.get(0), new Point("Air valve", "pneumatic", "tail", "start tried"));

        assertEquals(
                2,
                ProcedureQuestions.of(card(alike, List.of("Stop", "Isolate", "Lock")))
                        .size());
    }

    @Test
    void belongsToTheSitesOwnRulesAndToAuthorizedEmployees() {
        ProcedureQuestions.of(card(POINTS, List.of("Stop", "Isolate", "Lock"))).forEach(question -> {
            assertEquals(List.of("site"), question.question().source().ruleSets());
            assertTrue(question.audience().fits(beltmark.core.lockout.Audience.AUTHORIZED));
            assertTrue(!question.audience().fits(beltmark.core.lockout.Audience.AFFECTED));
            assertEquals(List.of("bora", "3"), ProcedureQuestions.procedureOf(question.id()));
        });
        assertEquals(List.of(), ProcedureQuestions.procedureOf("stop-button"));
    }

    @Test
    void refusesFewerThanThreeSteps() {
        assertThrows(IllegalArgumentException.class, () -> card(POINTS, List.of("Stop", "Isolate")));
    }

    private static Question question(int place) {
        return ProcedureQuestions.of(card(POINTS, List.of("Stop", "Isolate", "Lock")))
                .get(place)
                .question();
    }

    private static ProcedureCard card(List<Point> points, List<String> steps) {
        return new ProcedureCard(
                "bora", 3, "Bora", "blade change", points, List.of(new Energy("electrical", "22 kW")), steps);
    }
}
