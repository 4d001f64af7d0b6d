package beltmark.core.setup;

import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import java.util.List;

/**
 * Where the tensioner's datum edge goes: own side's belt mark plus the card's offset. Each side has its own belt mark,
 * because the structure need not be level across; never carry a height over from the other bracket. Common practice, no
 * published source.
 *
 * @param beltMarks the belt marks, above the foot of the tape
 * @param offset how far above the belt mark the datum edge goes; positive upwards
 */
public record MountMarks(Sides beltMarks, Length offset) {

    /** {@return the mount marks, above the foot of the tape} */
    public Sides heights() {
        return beltMarks.plus(offset);
    }

    /** {@return one step per side} */
    public List<Step> steps() {
        return List.of(step(Side.LEFT), step(Side.RIGHT));
    }

    private Step step(Side side) {
        return Step.of("mount-mark-" + side.id(), "beltMark", beltMarks.on(side))
                .with("offset", offset)
                .with("mountMark", heights().on(side));
    }
}
