package beltmark.core.blade;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.spring.WorkingSpring;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.Word;

/**
 * What happens while a splice of height h passes: the coils shorten to L - h, each spring carries k (L0 - L + h), the blade
 * presses with N0 + 2 k h; the cleaner can drop by the smaller of the sleeve showing and L - Ls - Sa. Own derivation.
 *
 * @param coil the length of each coil then
 * @param each the force of each spring then
 * @param load the force on the belt then
 * @param travel how far the cleaner can drop
 * @param margin travel less the splice; negative when it strikes
 * @param limit {@code travel-limit.sleeve} or {@code travel-limit.coils}: what ends the travel
 */
public record SpliceCheck(Length coil, Force each, Force load, Length travel, Length margin, Word limit) {

    /**
     * The room there is to drop.
     *
     * @param exposure the sleeve showing under the bushing, not negative
     * @param gaps the least sum of coil gaps Sa to keep, not negative
     */
    public record Room(Length exposure, Length gaps) {

        public Room {
            Limits.notNegative("exposure", exposure);
            Limits.notNegative("gaps", gaps);
        }
    }

    /**
     * Checks a splice.
     *
     * @param spring the spring on each side
     * @param coil the length of each coil as set L, from solid to free
     * @param load of the blade as set N0, above 0
     * @param room to drop
     * @param splice the height of the splice h, not negative
     * @return what happens; with TRAVEL_SHORT when the margin is negative, THIN_OVERRUN on top of the splice
     * @throws Refused SPRING_LOOSE, COIL_BIND, OUT_OF_RANGE
     */
    public static Solution<SpliceCheck> of(WorkingSpring spring, Length coil, Force load, Room room, Length splice) {
        Limits.positive("load", load);
        Limits.notNegative("splice", splice);
        Length during = spring.checked(spring.checked(coil).minus(splice));
        Length springTravel = coil.minus(spring.solid()).minus(room.gaps);
        boolean sleeveEnds = room.exposure.compareTo(springTravel) <= 0;
        Length travel = sleeveEnds ? room.exposure : springTravel;
        Force loadDuring = load.plus(spring.rate().force(splice).times(2));
        SpliceCheck check = new SpliceCheck(
                during,
                spring.forceAt(during),
                loadDuring,
                travel,
                travel.minus(splice),
                new Word(sleeveEnds ? "travel-limit.sleeve" : "travel-limit.coils"));
        return Solution.of(check, steps(check, load, spring, room, springTravel, splice))
                .warnIf(check.margin.isNegative(), Warning.TRAVEL_SHORT)
                .warnIf(spring.isThinAt(during), Warning.THIN_OVERRUN);
    }

    private static Step[] steps(
            SpliceCheck check, Force load, WorkingSpring spring, Room room, Length springTravel, Length splice) {
        return new Step[] {
            Step.of("splice-coil", "splice", splice).with("coil", check.coil),
            Step.of("splice-force", "rate", spring.rate())
                    .with("free", spring.free())
                    .with("coil", check.coil)
                    .with("each", check.each),
            Step.of("splice-load", "load", load)
                    .with("rate", spring.rate())
                    .with("splice", splice)
                    .with("loadDuring", check.load),
            Step.of("splice-travel", "exposure", room.exposure)
                    .with("springTravel", springTravel)
                    .with("travel", check.travel),
            Step.of("splice-margin", "travel", check.travel)
                    .with("splice", splice)
                    .with("margin", check.margin)
        };
    }
}
