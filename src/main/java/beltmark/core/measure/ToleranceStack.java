package beltmark.core.measure;

import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Limits;
import beltmark.core.units.PreciseLength;
import beltmark.core.units.Ratio;
import java.util.List;

/**
 * How several tolerances add up: at worst sum |a t|, likely sqrt(sum (a t)^2), with how much each counts a. Source:
 * published tutorials on tolerance stacks (seen).
 *
 * @param worst everything off the same way
 * @param likely the root of the sum of squares
 */
public record ToleranceStack(PreciseLength worst, PreciseLength likely) {

    /**
     * One member of a stack.
     *
     * @param tolerance either way t, not negative
     * @param share how much of it counts a; 1 when it counts in full
     */
    public record Member(PreciseLength tolerance, double share) {

        public Member {
            Limits.notNegative("tolerances", tolerance);
            Limits.finite("shares", share);
        }

        private double millimetres() {
            return tolerance.millimetres() * share;
        }
    }

    /**
     * Adds up.
     *
     * @param members at least one
     * @throws Refused NOTHING_GIVEN, OUT_OF_RANGE
     */
    public static Solution<ToleranceStack> of(List<Member> members) {
        if (members.isEmpty()) {
            throw Refused.because(Refusal.NOTHING_GIVEN).with("what", "tolerances");
        }
        double worst = 0;
        double squares = 0;
        for (Member member : members) {
            worst += Math.abs(member.millimetres());
            squares += member.millimetres() * member.millimetres();
        }
        ToleranceStack stack = new ToleranceStack(new PreciseLength(worst), new PreciseLength(Math.sqrt(squares)));
        return Solution.of(
                stack,
                Step.of("stack", "members", new Ratio(members.size()))
                        .with("worst", stack.worst)
                        .with("likely", stack.likely));
    }
}
