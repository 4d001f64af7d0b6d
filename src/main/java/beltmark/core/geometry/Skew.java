package beltmark.core.geometry;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Solution;
import beltmark.core.solution.Step;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.Limits;
import beltmark.core.units.PreciseLength;

/**
 * What it does when one bracket is ahead of the other: psi = atan(dx/S); one end of the blade leads by b sin(psi) and the
 * blade covers b (1 - cos(psi)) less of the belt. Own derivation.
 *
 * @param angle psi
 * @param lead of one end of the blade over the other, signed as dx
 * @param widthLost how much less of the belt is covered
 */
public record Skew(Angle angle, PreciseLength lead, PreciseLength widthLost) {

    /**
     * Finds the three.
     *
     * @param outOfLine how far one bracket is ahead along the belt dx, signed
     * @param span between the brackets S, above 0
     * @param blade the length of the blade b, above 0
     * @throws Refused OUT_OF_RANGE
     */
    public static Solution<Skew> of(Length outOfLine, Length span, Length blade) {
        Limits.signed("outOfLine", outOfLine);
        Limits.positive("span", span);
        Limits.positive("blade", blade);
        double psi = Math.atan2(outOfLine.millimetres(), span.millimetres());
        double b = blade.millimetres();
        // 1 - cos(psi) written so that small angles keep their digits
        double lost = 2 * b * Math.pow(Math.sin(psi / 2), 2);
        Skew skew = new Skew(Angle.ofRadians(psi), new PreciseLength(b * Math.sin(psi)), new PreciseLength(lost));
        return Solution.of(
                skew,
                Step.of("skew-angle", "outOfLine", outOfLine).with("span", span).with("angle", skew.angle),
                Step.of("skew-lead", "blade", blade).with("angle", skew.angle).with("lead", skew.lead),
                Step.of("skew-width", "blade", blade).with("angle", skew.angle).with("lost", skew.widthLost));
    }
}
