package beltmark.core.lockout;

import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A question of the bank with what decides whether a paper may ask it.
 *
 * @param question the question; critical exactly when it has a point
 * @param topic the part of the bank it belongs to
 * @param audience whom it may be asked
 * @param point what must not be missed and is asked of everybody, such as {@code isolation}; null for the others
 * @param reviewed whether a second reading has found question, key and both languages sound
 */
public record BankQuestion(
        Question question,
        String topic,
        Audience audience,
        @Nullable String point,
        boolean reviewed) {

    /** Refuses a question that is critical without a point, or the reverse. */
    public BankQuestion {
        if (question.critical() != (point != null)) {
            throw new IllegalArgumentException(question.id() + " is critical without a point, or the reverse");
        }
    }

    /** {@return the id of the question} */
    public String id() {
        return question.id();
    }

    /** {@return what everybody is asked about, if the question is critical} */
    public Optional<String> findPoint() {
        return Optional.ofNullable(point);
    }

    /**
     * Tells whether a paper may ask this question.
     *
     * @param ruleSets the rule sets the site works under
     * @param switches what the coordinator has confirmed and retired
     * @return false outside the rule sets, before review, when retired, or when the source waits for confirmation
     */
    public boolean mayBeAsked(Set<String> ruleSets, Switches switches) {
        return reviewed
                && question.source().ruleSets().stream().anyMatch(ruleSets::contains)
                && !switches.retired().contains(id())
                && (!question.source().mark().needsConfirmation()
                        || switches.confirmed().contains(id()));
    }
}
