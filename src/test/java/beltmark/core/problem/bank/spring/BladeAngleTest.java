package beltmark.core.problem.bank.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.geometry.BladeLean;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Verdict;
import beltmark.core.problem.Answer;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.units.Angle;
import beltmark.core.units.LengthUnit;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BladeAngleTest {

    @ParameterizedTest
    @CsvSource({
        // angle to the belt, slope, lean; angles of a triangle, drawn and measured by hand
        "90, 0, 0",
        "70, 0, -20",
        "70, 12, -8",
        "70, -12, -32",
        "84, 15, 9"
    })
    void leansFromPlumbBySlopeAndAngle(double toBelt, double slope, double lean) {
        assertEquals(
                lean,
                BladeLean.fromPlumb(new Angle(toBelt), new Angle(slope))
                        .result()
                        .degrees(),
                1e-9);
    }

    @Test
    void theTurnFollowsFromTheOwnReading() {
        Problem problem = Sample.family("blade-angle").problem(new ProblemCode("7"));
        AngleScene scene = (AngleScene) problem.scene();
        Part turn = problem.parts().get(1);
        double misread = 180 - scene.present().degrees();
        OwnFigures own = OwnFigures.NONE.with("blade-angle-read.angle", new Answer.OfNumber(misread));
        double amount = Math.abs(scene.wanted().degrees() - misread);
        String way = scene.wanted().degrees() > misread ? "turn-against-travel" : "turn-with-travel";
        PartGrade grade =
                PartGrade.of(turn, Map.of("way", way, "amount", Double.toString(amount)), LengthUnit.INCH, own);
        assertEquals(Verdict.CARRIED, grade.find("amount").orElseThrow().verdict(), () -> scene.toString());
        assertTrue(grade.isAccepted());
    }

    /** The sine of the rise is height by arm: checked by going back from the angle to the height. */
    @Test
    void theArmReachesTheBeltAsItIs() {
        Sample.codes(500).forEach(code -> {
            Problem problem = Sample.family("blade-angle").problem(code);
            AngleScene.Arm arm = ((AngleScene) problem.scene()).arm();
            double error =
                    ((Answer.OfNumber) problem.parts().get(3).blanks().get(0).right()).amount();
            double meant = Math.asin(arm.height().millimetres() / arm.length().millimetres());
            double reached =
                    Math.sin(meant + Math.toRadians(error)) * arm.length().millimetres();
            assertEquals(arm.height().plus(arm.low()).millimetres(), reached, 1e-6);
        });
    }
}
