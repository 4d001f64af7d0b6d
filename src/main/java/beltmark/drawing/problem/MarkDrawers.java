package beltmark.drawing.problem;

import beltmark.core.geometry.SlopingBelt;
import beltmark.core.problem.Part;
import beltmark.core.problem.bank.mark.BracketScene;
import beltmark.core.problem.bank.mark.CupScene;
import beltmark.core.problem.bank.mark.PoleScene;
import beltmark.core.problem.bank.mark.SlopingScene;
import beltmark.core.units.Length;
import beltmark.drawing.Drawing;
import beltmark.drawing.mark.BoltDrawing;
import beltmark.drawing.mark.CupDrawing;
import beltmark.drawing.mark.DiagonalDrawing;
import beltmark.drawing.mark.PoleDrawing;
import beltmark.drawing.mark.PoleLevelDrawing;
import beltmark.drawing.mark.SlopingDrawing;
import beltmark.texts.Words;
import java.util.List;

/** Draws the parts of the problems about belt marks, brackets and the pole. */
final class MarkDrawers {

    private MarkDrawers() {}

    static List<Drawing> cup(CupScene scene, Part part, Telling telling) {
        boolean told = telling.tells(part);
        if (part.id().equals("cup-pole-level")) {
            Length gap = SlopingBelt.levelAgainstTilt(scene.mounting().blade(), scene.tilt())
                    .result()
                    .toLength();
            return List.of(PoleLevelDrawing.of(scene, gap, told, telling.words()));
        }
        boolean marksTold = told || telling.solved().contains("cup-belt-mark");
        return part.id().equals("cup-belt-mark")
                ? List.of(CupDrawing.of(scene, part.id(), told, telling.words()))
                : List.of(CupDrawing.of(scene, part.id(), marksTold, telling.words()));
    }

    static List<Drawing> sloping(SlopingScene scene, Part part, Telling telling) {
        // how far it is along the belt is asked in the second part only
        boolean told = part.id().equals("sloping-plumb") && telling.tells(part);
        return List.of(SlopingDrawing.of(scene, part.id(), told, telling.words()));
    }

    static List<Drawing> bracket(BracketScene scene, Part part, Telling telling) {
        boolean told = telling.tells(part);
        return switch (part.id()) {
            case "bracket-bolt" -> List.of(BoltDrawing.of(scene, told, telling.words()));
            case "bracket-diagonals" -> List.of(DiagonalDrawing.of(scene, told, telling.words()));
            default -> List.of();
        };
    }

    static List<Drawing> pole(PoleScene scene, Part part, Telling telling) {
        boolean told = telling.tells(part);
        Words words = telling.words();
        return List.of(
                switch (part.id()) {
                    case "pole-cut" -> PoleDrawing.cut(scene, told, words);
                    case "pole-centre" -> PoleDrawing.centre(scene, told, words);
                    default -> PoleDrawing.margin(scene, told, words);
                });
    }
}
