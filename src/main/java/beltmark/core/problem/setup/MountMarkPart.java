package beltmark.core.problem.setup;

import beltmark.core.problem.Blank;
import beltmark.core.problem.Carry;
import beltmark.core.problem.Given;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.MountMarkSlips;
import beltmark.core.setup.MountMarks;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Tip;
import beltmark.core.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Working out the mount mark on each side from that side's own belt mark. */
final class MountMarkPart {

    private static final String ORIENTATION = Part.path(SetupPart.ORIENTATION.id(), OrientationPart.BLANK);

    private MountMarkPart() {}

    static Part of(Situation situation, SituationRanges ranges) {
        // where nothing fits there is no mount mark to ask; the families that ask for it never draw such a place
        Orientation orientation = situation.orientation().chosen().orElse(Orientation.OVERSLUNG);
        MountMarks marks = situation.mountMarks(orientation);
        return new Part(
                SetupPart.MOUNT_MARK.id(),
                offsets(situation.card()),
                Stream.of(Side.values())
                        .map(side -> blank(situation, marks, orientation, side, ranges))
                        .toList(),
                marks.steps());
    }

    /** The card's offsets for every tip and orientation: picking the one that applies here is part of the job. */
    private static List<Given> offsets(HardwareCard card) {
        return Stream.of(Tip.values())
                .flatMap(tip -> Stream.of(Orientation.values())
                        .map(way -> new Given("offset-" + tip.id() + "-" + way.id(), card.mountOffset(tip, way))))
                .toList();
    }

    private static Blank blank(
            Situation situation, MountMarks marks, Orientation orientation, Side side, SituationRanges ranges) {
        return new LengthBlank(
                side.id(),
                marks.heights().on(side),
                ranges.reading(),
                ranges.tapeAnswers(),
                MountMarkSlips.of(situation.card(), situation.tip(), orientation, situation.beltMarks(), side),
                carry(situation, orientation, side));
    }

    private static Carry<Length> carry(Situation situation, Orientation orientation, Side side) {
        String beltMark = Part.path(SetupPart.BELT_MARK.id(), side.id());
        return own -> orientation(own, orientation)
                .map(way -> own.length(beltMark, situation.beltMarks().on(side))
                        .plus(situation.card().mountOffset(situation.tip(), way)));
    }

    private static Optional<Orientation> orientation(OwnFigures own, Orientation right) {
        String id = own.choice(ORIENTATION, right.id());
        return Stream.of(Orientation.values())
                .filter(way -> way.id().equals(id))
                .findFirst();
    }
}
