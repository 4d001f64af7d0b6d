package beltmark.drawing.mark;

import beltmark.core.problem.bank.mark.CupScene;
import beltmark.core.units.Length;
import beltmark.drawing.Aligned;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Heights;
import beltmark.drawing.Label;
import beltmark.drawing.Outline;
import beltmark.drawing.Point;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.List;
import java.util.Map;

/** A level blade under a belt that is tilted across its travel, to scale: they touch at one end only. */
public final class PoleLevelDrawing {

    private static final double WIDTH = 130;
    private static final double PAPER = 90;
    private static final double LEFT = 8;
    private static final double TOP = 22;
    private static final double BELT = 2;
    private static final double BLADE = 4;

    private PoleLevelDrawing() {}

    /** {@return the drawing; the gap stands on it only when told} */
    public static Drawing of(CupScene scene, Length gap, boolean told, Words words) {
        Length blade = scene.mounting().blade();
        Sheet sheet = new Sheet(Heights.scaleFor(blade, PAPER, 1), words);
        double right = LEFT + sheet.paper(blade);
        double touching = TOP + sheet.paper(gap);
        Point low = new Point(LEFT, touching);
        Point high = new Point(right, TOP);
        sheet.add(new Outline(
                List.of(low, high, new Point(right, TOP - BELT), new Point(LEFT, touching - BELT)), true, Style.BELT));
        sheet.add(Box.between(LEFT, touching, right, touching + BLADE, Style.PART));
        sheet.add(Label.from(
                LEFT, 5, words.say("drawing-mark.pole.belt-tilted", Map.of("tilt", scene.tilt())), Style.TEXT));
        sheet.across("blade", blade, Aligned.of(LEFT, touching + BLADE, right, touching + BLADE, -7));
        if (told) {
            Aligned line = Aligned.of(right, touching, right, TOP, -7);
            sheet.dimension("gap", gap, line, Label.Anchor.START, right + 9, (TOP + touching) / 2 + 2);
        }
        Map<String, Object> values = Map.of("blade", blade, "tilt", scene.tilt(), "gap", gap);
        return sheet.drawing("pole-level", "pole", values, told, Math.max(WIDTH, right + 42), touching + BLADE + 16);
    }
}
