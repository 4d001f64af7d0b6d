package beltmark.qualification;

import beltmark.core.qualification.EventKind;
import beltmark.core.qualification.FactKind;
import beltmark.core.qualification.Scope;
import java.time.LocalDate;

/**
 * A fact to be written down with a record.
 *
 * @param kind what it says
 * @param scope whom it concerns
 * @param subject the id of the quiz, paper, card or event; empty where there is none
 * @param by who signed a demonstration; 0 otherwise
 * @param of the earlier record that is released or withdrawn; 0 otherwise
 * @param on the day at the site on which it happened
 */
public record NewFact(FactKind kind, Scope scope, String subject, long by, long of, LocalDate on) {

    /** {@return that somebody passed a quiz} */
    public static NewFact quizPassed(long person, String quiz, LocalDate on) {
        return new NewFact(FactKind.QUIZ_PASSED, Scope.person(person), quiz, 0, 0, on);
    }

    /** {@return that somebody passed a paper} */
    public static NewFact paperPassed(long person, String paper, LocalDate on) {
        return new NewFact(FactKind.PAPER_PASSED, Scope.person(person), paper, 0, 0, on);
    }

    /** {@return that somebody showed a set-up on a card, signed by an assessor} */
    public static NewFact demonstration(long person, String card, long assessor, LocalDate on) {
        return new NewFact(FactKind.DEMONSTRATION, Scope.person(person), card, assessor, 0, on);
    }

    /** {@return that those concerned are held back, whatever the rules say} */
    public static NewFact hold(Scope scope, LocalDate on) {
        return new NewFact(FactKind.HOLD, scope, "", 0, 0, on);
    }

    /** {@return that something happened to which the rules have an answer} */
    public static NewFact event(EventKind event, Scope scope, LocalDate on) {
        if (event == EventKind.LONG_ABSENCE) {
            throw new IllegalArgumentException("a long absence follows from the activity and is not recorded");
        }
        return new NewFact(FactKind.EVENT, scope, event.id(), 0, 0, on);
    }

    /** {@return that the hold or event of an earlier record is over for those concerned} */
    public static NewFact release(Scope scope, long record, LocalDate on) {
        return new NewFact(FactKind.RELEASE, scope, "", 0, record, on);
    }

    /** {@return that what an earlier record said of those concerned does not count} */
    public static NewFact withdrawal(Scope scope, long record, LocalDate on) {
        return new NewFact(FactKind.WITHDRAWAL, scope, "", 0, record, on);
    }

    boolean isPersonsWork() {
        return kind == FactKind.QUIZ_PASSED || kind == FactKind.PAPER_PASSED || kind == FactKind.DEMONSTRATION;
    }
}
