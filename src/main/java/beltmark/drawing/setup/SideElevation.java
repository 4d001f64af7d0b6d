package beltmark.drawing.setup;

import beltmark.core.problem.setup.SetupPart;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Situation;
import beltmark.drawing.Drawing;
import beltmark.texts.Words;
import java.util.Set;

/**
 * Elevations of one place, seen along the belt travel: belt, post, tensioner, and what is around them. Heights are to
 * scale, widths are not.
 *
 * @param situation the place and the hardware
 * @param told the parts whose answers may be seen; nothing of any other part's answer stands in a drawing
 */
public record SideElevation(Situation situation, Set<SetupPart> told) {

    public SideElevation {
        told = Set.copyOf(told);
    }

    /**
     * {@return both ways of mounting side by side with the given dimensions; once the orientation is told, also the least
     * gap of each and which one is mounted}
     */
    public Drawing orientation(Words words) {
        return new OrientationElevation(situation, told.contains(SetupPart.ORIENTATION), words).drawing();
    }

    /**
     * Draws the tensioner mounted on both sides.
     *
     * @param orientation which way round it is drawn; the caller must not pass it before it is known
     * @param words the reader's words
     * @return the elevation with the belt marks once they are told, and the offsets and mount marks once those are
     */
    public Drawing mountMarks(Orientation orientation, Words words) {
        return new MarkElevation(situation, orientation, told, words).drawing();
    }

    /** {@return the sleeve with what is given, and the sleeve showing once it is told} */
    public Drawing sleeve(Words words) {
        return SleeveDetail.of(situation.sleeve(), told.contains(SetupPart.SLEEVE), words);
    }
}
