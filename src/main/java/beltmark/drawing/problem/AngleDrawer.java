package beltmark.drawing.problem;

import beltmark.core.geometry.ArmAngle;
import beltmark.core.geometry.BladeLean;
import beltmark.core.problem.Part;
import beltmark.core.problem.bank.spring.AngleScene;
import beltmark.core.units.Angle;
import beltmark.drawing.Drawing;
import beltmark.drawing.spring.BeltAngle;
import beltmark.drawing.spring.PivotedArm;
import beltmark.texts.Words;
import java.util.List;

/** Draws the parts of a blade angle. */
final class AngleDrawer implements PartDrawer<AngleScene> {

    @Override
    public List<Drawing> draw(AngleScene scene, Part part, Telling telling) {
        boolean told = telling.tells(part);
        Words words = telling.words();
        return switch (part.id()) {
            case "blade-angle-read" -> List.of(BeltAngle.protractor(scene, told, words));
            case "blade-angle-turn" -> List.of(BeltAngle.turn(scene, told, words));
            case "blade-angle-plumb" -> List.of(BeltAngle.plumb(scene, lean(scene), told, words));
            default -> List.of(PivotedArm.of(scene.arm(), error(scene.arm()), told, words));
        };
    }

    private static Angle lean(AngleScene scene) {
        double lean =
                BladeLean.fromPlumb(scene.wanted(), scene.slope()).result().degrees();
        return new Angle(Math.abs(lean));
    }

    private static Angle error(AngleScene.Arm arm) {
        return ArmAngle.error(arm.length(), arm.height(), arm.low()).result();
    }
}
