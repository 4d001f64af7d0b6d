package beltmark.drawing.problem;

import beltmark.core.problem.Part;
import beltmark.core.problem.bank.mark.FractionScene;
import beltmark.core.units.Length;
import beltmark.drawing.Drawing;
import beltmark.drawing.mark.MiddleDrawing;
import beltmark.drawing.mark.PostDrawing;
import beltmark.texts.Words;
import java.util.List;

/** Draws the marks and the width whose fractions are reckoned with. */
final class FractionDrawer implements PartDrawer<FractionScene> {

    @Override
    public List<Drawing> draw(FractionScene scene, Part part, Telling telling) {
        boolean told = telling.tells(part);
        Words words = telling.words();
        return List.of(
                switch (part.id()) {
                    case "fraction-sum" ->
                        new PostDrawing(
                                        level("belt-mark", scene.beltMark(), "drawing-mark.belt-mark", words),
                                        level(
                                                "mount-mark",
                                                scene.beltMark().plus(scene.offset()),
                                                "drawing-mark.mount-mark",
                                                words))
                                .drawing("post-sum", told, words);
                    case "fraction-difference" ->
                        new PostDrawing(
                                        level("upper", scene.upper(), "drawing-mark.upper-mark", words),
                                        level(
                                                "lower",
                                                scene.upper().minus(scene.drop()),
                                                "drawing-mark.lower-mark",
                                                words))
                                .drawing("post-difference", told, words);
                    default -> new MiddleDrawing(scene.width(), scene.width().times(0.5)).drawing(told, words);
                });
    }

    private static PostDrawing.Level level(String id, Length height, String name, Words words) {
        return new PostDrawing.Level(id, height, words.say(name));
    }
}
