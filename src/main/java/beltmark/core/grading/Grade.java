package beltmark.core.grading;

import beltmark.core.problem.Answer;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The judgement of one typed answer.
 *
 * @param verdict the outcome
 * @param answer what was read; null when unreadable
 * @param slip the slip's id for {@link Verdict#SLIP}, else null
 * @param unreadable why, for {@link Verdict#UNREADABLE}, else null
 */
public record Grade(
        Verdict verdict,
        @Nullable Answer answer,
        @Nullable String slip,
        @Nullable Unreadable unreadable) {

    static Grade of(Verdict verdict, Answer answer) {
        return new Grade(verdict, answer, null, null);
    }

    static Grade slip(String slip, Answer answer) {
        return new Grade(Verdict.SLIP, answer, slip, null);
    }

    static Grade unreadable(Unreadable why) {
        return new Grade(Verdict.UNREADABLE, null, null, why);
    }

    /** {@return what was read, if it could be} */
    public Optional<Answer> findAnswer() {
        return Optional.ofNullable(answer);
    }
}
