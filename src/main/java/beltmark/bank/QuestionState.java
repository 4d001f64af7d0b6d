package beltmark.bank;

import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Switches;
import java.util.List;
import java.util.Set;

/** Whether papers ask a question, and if not why not. */
enum QuestionState {
    /** Papers may ask it. */
    ASKED("asked"),
    /** Its source waits to be confirmed. */
    WAITS("waits"),
    /** It was taken out. */
    RETIRED("retired"),
    /** It belongs to rule sets the site has not chosen. */
    OUTSIDE("outside");

    private final String id;

    QuestionState(String id) {
        this.id = id;
    }

    /** {@return the name in addresses and text keys} */
    String id() {
        return id;
    }

    static QuestionState of(BankQuestion question, List<String> ruleSets, Switches switches) {
        if (switches.retired().contains(question.id())) {
            return RETIRED;
        }
        if (question.question().source().ruleSets().stream().noneMatch(ruleSets::contains)) {
            return OUTSIDE;
        }
        return question.mayBeAsked(Set.copyOf(ruleSets), switches) ? ASKED : WAITS;
    }
}
