package beltmark.drawing.problem;

import beltmark.core.problem.Part;
import beltmark.core.problem.Scene;
import beltmark.drawing.Drawing;
import java.util.List;

/**
 * Draws the parts of the problems about one kind of scene.
 *
 * @param <S> the scene
 */
@FunctionalInterface
public interface PartDrawer<S extends Scene> {

    /** {@return the drawings of a part; a part's own answers stand on them only where the telling tells them} */
    List<Drawing> draw(S scene, Part part, Telling telling);
}
