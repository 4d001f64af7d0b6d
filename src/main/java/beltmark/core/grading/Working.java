package beltmark.core.grading;

import beltmark.core.problem.Blank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * How far one person has worked one problem: the parts in order, each answered as often as it takes, the next one opening
 * when the one before is right or left. It is a value; every answer makes a new one.
 *
 * @param problem the problem
 * @param parts the state of each part, in order
 */
public record Working(Problem problem, List<PartWorking> parts) {

    /**
     * The state of one part.
     *
     * @param part the part
     * @param last the last readable answer, null before the first
     * @param rightFirst whether the first answer was right; false before it
     * @param leaving how it was left; null unless it was
     */
    public record PartWorking(
            Part part,
            @Nullable PartGrade last,
            boolean rightFirst,
            @Nullable Leaving leaving) {

        /** {@return whether the part is done: right, or left} */
        public boolean isClosed() {
            return leaving != null || (last != null && last.isAccepted());
        }

        private PartWorking answered(PartGrade grade) {
            return new PartWorking(part, grade, last == null ? grade.isRight() : rightFirst, leaving);
        }

        private PartWorking left(Leaving how) {
            return new PartWorking(part, last, rightFirst, how);
        }

        private OwnFigures addTo(OwnFigures own) {
            if (leaving == Leaving.STEPS_SHOWN) {
                OwnFigures more = own;
                for (Blank blank : part.blanks()) {
                    more = more.with(part.path(blank), blank.right());
                }
                return more;
            }
            return last == null ? own : last.addTo(own, part);
        }
    }

    public Working {
        parts = List.copyOf(parts);
    }

    /** {@return a problem of which nothing is answered} */
    public static Working of(Problem problem) {
        return new Working(
                problem,
                problem.parts().stream()
                        .map(part -> new PartWorking(part, null, false, null))
                        .toList());
    }

    /** {@return the part to be answered now, or empty when all are done} */
    public Optional<PartWorking> open() {
        return parts.stream().filter(part -> !part.isClosed()).findFirst();
    }

    /** {@return the part to be answered now, if it is the one of that id} */
    public Optional<PartWorking> open(String id) {
        return open().filter(open -> open.part().id().equals(id));
    }

    /** {@return the own figures that the open part may build on} */
    public OwnFigures own() {
        OwnFigures own = OwnFigures.NONE;
        for (PartWorking part : parts) {
            if (part.isClosed()) {
                own = part.addTo(own);
            }
        }
        return own;
    }

    /** {@return whether nothing is left to answer} */
    public boolean isFinished() {
        return open().isEmpty();
    }

    /** {@return whether all parts are done and each was right at the first answer, without help} */
    public boolean isClean() {
        return isFinished() && parts.stream().allMatch(PartWorking::rightFirst);
    }

    /** {@return this with the open part answered} */
    public Working answered(PartGrade grade) {
        return changed(open -> open.answered(grade));
    }

    /** {@return this with the open part left} */
    public Working left(Leaving how) {
        return changed(open -> open.left(how));
    }

    private Working changed(UnaryOperator<PartWorking> change) {
        PartWorking open = open().orElseThrow(() -> new IllegalStateException("all parts are done"));
        return new Working(
                problem,
                parts.stream()
                        .map(part -> part.equals(open) ? change.apply(part) : part)
                        .toList());
    }
}
