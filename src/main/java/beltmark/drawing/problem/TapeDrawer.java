package beltmark.drawing.problem;

import beltmark.core.problem.Part;
import beltmark.core.problem.bank.mark.TapeScene;
import beltmark.core.setup.Side;
import beltmark.drawing.Drawing;
import beltmark.drawing.TapeCloseUp;
import java.util.List;

/** Draws the tapes that are read: the broken one at the foot plate too, where one sees by which line it is held. */
final class TapeDrawer implements PartDrawer<TapeScene> {

    @Override
    public List<Drawing> draw(TapeScene scene, Part part, Telling telling) {
        Side side = part.id().equals("tape-sound") ? Side.LEFT : Side.RIGHT;
        Drawing mark = new TapeCloseUp(TapeCloseUp.Mark.BELT, side, scene.at(side))
                .drawing(telling.tells(part), scene.tape(), telling.words());
        if (side == Side.LEFT) {
            return List.of(mark);
        }
        Drawing foot = new TapeCloseUp(TapeCloseUp.Mark.FOOT, side, scene.heldBy())
                .drawing(true, scene.tape(), telling.words());
        return List.of(foot, mark);
    }
}
