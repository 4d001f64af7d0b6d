package beltmark.drawing.mark;

import beltmark.core.geometry.Centring;
import beltmark.core.geometry.PoleLength;
import beltmark.core.problem.bank.mark.PoleScene;
import beltmark.core.setup.PoleCard;
import beltmark.core.units.Length;
import beltmark.drawing.Aligned;
import beltmark.drawing.Box;
import beltmark.drawing.Drawing;
import beltmark.drawing.Label;
import beltmark.drawing.Style;
import beltmark.texts.Words;
import java.util.HashMap;
import java.util.Map;

/** The conveyor across, seen along the belt travel: walls, belt, blade and pole. Widths are to scale, heights are not. */
public final class PoleDrawing {

    private static final double PAPER = 108;
    private static final double EDGE = 9;
    private static final double WALL_TOP = 16;
    private static final double BELT = 32;
    private static final double BLADE = 34.5;
    private static final double POLE = 42;
    private static final double POLE_BOTTOM = 46;
    private static final double WALL_BOTTOM = 54;
    private static final double LANE = 9;

    private final PoleScene scene;
    private final boolean told;
    private final Sheet sheet;
    private final double middle;
    private final Length pole;

    private PoleDrawing(PoleScene scene, boolean told, Words words) {
        PoleCard card = scene.card().pole();
        this.scene = scene;
        this.told = told;
        this.pole =
                PoleLength.of(scene.outside(), card.bracket(), card.overhang()).result();
        this.sheet = new Sheet(pole.millimetres() / PAPER, words);
        this.middle = EDGE + PAPER / 2;
    }

    /** {@return the drawing of the part about the pole's length} */
    public static Drawing cut(PoleScene scene, boolean told, Words words) {
        return new PoleDrawing(scene, told, words).cut();
    }

    /** {@return the drawing of the part about the blade between the walls} */
    public static Drawing centre(PoleScene scene, boolean told, Words words) {
        return new PoleDrawing(scene, told, words).centre();
    }

    /** {@return the drawing of the part about the blade on the belt} */
    public static Drawing margin(PoleScene scene, boolean told, Words words) {
        return new PoleDrawing(scene, told, words).margin();
    }

    private Drawing cut() {
        PoleCard card = scene.card().pole();
        addSection(Length.ZERO);
        double wall = half(scene.outside());
        sheet.across("outside", scene.outside(), Aligned.of(-wall + middle, WALL_TOP, middle + wall, WALL_TOP, 7));
        double bracket = middle + wall + sheet.paper(card.bracket());
        double end = bracket + sheet.paper(card.overhang());
        right("bracket", card.bracket(), middle + wall, bracket, 10);
        right("overhang", card.overhang(), bracket, end, 18);
        if (told) {
            sheet.across("pole", pole, Aligned.of(EDGE, POLE_BOTTOM, EDGE + PAPER, POLE_BOTTOM, -28));
        }
        return drawing("pole-cut", Map.of("bracket", card.bracket(), "overhang", card.overhang(), "pole", pole));
    }

    private Drawing centre() {
        addSection(Length.ZERO);
        double wall = half(scene.widths().inside());
        inside(wall);
        if (told) {
            Centring found = Centring.of(scene.widths(), scene.offsets().belt(), Length.ZERO, Length.ZERO)
                    .result();
            double blade = middle + sheet.paper(scene.offsets().belt());
            double bladeHalf = half(scene.widths().blade());
            below("left", found.leftWall(), middle - wall, blade - bladeHalf, -LANE);
            below("right", found.rightWall(), blade + bladeHalf, middle + wall, -LANE - 9);
            return drawing("pole-centre", Map.of("left", found.leftWall(), "right", found.rightWall()));
        }
        return drawing("pole-centre", Map.of("left", Length.ZERO, "right", Length.ZERO));
    }

    private Drawing margin() {
        Length off = scene.offsets().blade();
        addSection(off);
        Length margin = Centring.of(
                        scene.widths(),
                        scene.offsets().belt(),
                        off,
                        scene.offsets().mistracking())
                .result()
                .edgeMargin();
        double belt = middle + sheet.paper(scene.offsets().belt());
        double beltHalf = half(scene.widths().belt());
        sheet.across("belt", scene.widths().belt(), Aligned.of(belt - beltHalf, BELT, belt + beltHalf, BELT, 12));
        double blade = belt + sheet.paper(off);
        double bladeHalf = half(scene.widths().blade());
        below("blade", scene.widths().blade(), blade - bladeHalf, blade + bladeHalf, -LANE);
        return drawing("pole-margin", Map.of("margin", margin.abs()));
    }

    private double half(Length width) {
        return sheet.paper(width) / 2;
    }

    /** Walls, belt, blade and pole, the blade that far off the middle of the belt. */
    private void addSection(Length bladeOff) {
        double outer = half(scene.outside());
        double inner = half(scene.widths().inside());
        double belt = middle + sheet.paper(scene.offsets().belt());
        double beltHalf = half(scene.widths().belt());
        double blade = belt + sheet.paper(bladeOff);
        double bladeHalf = half(scene.widths().blade());
        sheet.add(Box.between(middle - outer, WALL_TOP, middle - inner, WALL_BOTTOM, Style.STEEL));
        sheet.add(Box.between(middle + inner, WALL_TOP, middle + outer, WALL_BOTTOM, Style.STEEL));
        sheet.add(Box.between(EDGE, POLE, EDGE + PAPER, POLE_BOTTOM, Style.PART));
        sheet.add(Box.between(blade - bladeHalf, BLADE, blade + bladeHalf, POLE, Style.PART));
        sheet.add(Box.between(belt - beltHalf, BELT, belt + beltHalf, BLADE - 0.2, Style.BELT));
    }

    private void inside(double wall) {
        sheet.across(
                "inside", scene.widths().inside(), Aligned.of(middle - wall, WALL_TOP, middle + wall, WALL_TOP, 7));
    }

    private void right(String id, Length length, double from, double to, double lane) {
        Aligned line = Aligned.of(from, POLE_BOTTOM, to, POLE_BOTTOM, -lane);
        sheet.dimension(id, length, line, Label.Anchor.END, from - 6, POLE_BOTTOM + lane + 2);
    }

    private void below(String id, Length length, double from, double to, double away) {
        sheet.across(id, length, Aligned.of(from, WALL_BOTTOM, to, WALL_BOTTOM, away));
    }

    private Drawing drawing(String id, Map<String, Length> asked) {
        Map<String, Object> values = new HashMap<>(asked);
        values.put("inside", scene.widths().inside());
        values.put("outside", scene.outside());
        values.put("belt", scene.widths().belt());
        values.put("blade", scene.widths().blade());
        return sheet.drawing(id, id, values, told, 2 * EDGE + PAPER, 84);
    }
}
