package beltmark.core.finish;

import beltmark.core.refusal.Refused;
import beltmark.core.setup.Sides;
import beltmark.core.setup.SleeveExposure;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import java.util.List;

/**
 * The readings at the blade against the site's limits. Centring: half the difference of the two distances to the belt
 * edges. Splice: it takes its own height of the sleeve that shows, of the side that shows less ({@link SleeveExposure}).
 *
 * @param findings one for each reading, in the order of the job
 */
public record FinishCheck(List<FinishFinding> findings) {

    public FinishCheck {
        findings = List.copyOf(findings);
    }

    /**
     * Checks what was read.
     *
     * @param limits what the site holds it to
     * @param sleeves the sleeve showing as measured on each side
     * @param finish what was read
     * @return a finding for each
     */
    public static FinishCheck of(FinishLimits limits, Sides sleeves, Finish finish) {
        return new FinishCheck(List.of(
                new FinishFinding(
                        FinishReading.CENTRING,
                        Length.ZERO,
                        finish.offCentre(),
                        limits.centring(),
                        finish.offCentre().isWithin(limits.centring(), Length.ZERO)),
                new FinishFinding(
                        FinishReading.BLADE_ANGLE,
                        limits.bladeAngle(),
                        finish.bladeAngle(),
                        limits.angleTolerance(),
                        isWithin(finish.bladeAngle(), limits)),
                new FinishFinding(
                        FinishReading.BOUNCE,
                        BounceResult.EVEN.word(),
                        finish.bounce().word(),
                        null,
                        finish.bounce() == BounceResult.EVEN),
                splice(Length.min(sleeves.left(), sleeves.right()), finish.splice())));
    }

    private static boolean isWithin(Angle angle, FinishLimits limits) {
        double off = Math.abs(angle.degrees() - limits.bladeAngle().degrees());
        return off <= limits.angleTolerance().degrees();
    }

    private static FinishFinding splice(Length sleeve, Length splice) {
        return new FinishFinding(FinishReading.SPLICE, sleeve, splice, null, passes(sleeve, splice));
    }

    private static boolean passes(Length sleeve, Length splice) {
        try {
            return !new SleeveExposure(sleeve, Length.ZERO, splice).overSplice().isNegative();
        } catch (Refused bottomsOut) {
            return false;
        }
    }
}
