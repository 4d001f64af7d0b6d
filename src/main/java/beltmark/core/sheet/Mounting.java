package beltmark.core.sheet;

import beltmark.core.geometry.SlopingBelt;
import beltmark.core.refusal.Refusal;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.MountMarks;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import beltmark.core.setup.Sides;
import beltmark.core.solution.Solution;
import beltmark.core.units.Angle;
import java.util.List;

/**
 * Which way round the tensioners go, and where their datum edges go.
 *
 * @param gaps what each way round leaves
 * @param way the way round to mount; NOTHING_FITS when neither leaves the clearance
 * @param marks the mount marks, with the offset square to the belt
 * @param offset how the offset reads square and plumb; OUT_OF_RANGE for an impossible slope
 * @param plumbMarks the mount marks where tape and offset are taken plumb on a sloping belt
 */
public record Mounting(
        OrientationChoice gaps,
        Found<Orientation> way,
        Found<MountMarks> marks,
        Found<SlopingBelt> offset,
        Found<Sides> plumbMarks) {

    /** {@return how the tensioners of an installation are mounted} */
    static Mounting of(Installation installation) {
        OrientationChoice gaps = installation.situation().orientation();
        Found<Orientation> way = Found.of(() -> chosen(gaps));
        Found<MountMarks> marks = way.then(orientation -> marks(installation, orientation));
        Found<SlopingBelt> offset = marks.then(found -> sloping(found, installation.slope()));
        Sides beltMarks = installation.situation().beltMarks();
        Found<Sides> plumbMarks = offset.then(
                found -> new Solution<>(beltMarks.plus(found.plumbReading().toLength()), List.of(), List.of()));
        return new Mounting(gaps, way, marks, offset, plumbMarks);
    }

    private static Solution<Orientation> chosen(OrientationChoice gaps) {
        Orientation way = gaps.chosen()
                .orElseThrow(() -> Refused.because(Refusal.NOTHING_FITS).with("shortBy", gaps.shortBy()));
        return new Solution<>(way, gaps.steps(), List.of());
    }

    private static Solution<MountMarks> marks(Installation installation, Orientation way) {
        MountMarks marks = installation.situation().mountMarks(way);
        return new Solution<>(marks, marks.steps(), List.of());
    }

    /** On a level belt square and plumb are one, which needs no steps. */
    private static Solution<SlopingBelt> sloping(MountMarks marks, Angle slope) {
        Solution<SlopingBelt> offset = SlopingBelt.of(marks.offset(), slope);
        return slope.degrees() == 0 ? Solution.of(offset.result()) : offset;
    }

    /** {@return every quantity, in the order of the job} */
    List<Found<?>> all() {
        return List.of(way, marks, offset, plumbMarks);
    }
}
