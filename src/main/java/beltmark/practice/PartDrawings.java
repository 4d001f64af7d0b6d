package beltmark.practice;

import beltmark.core.grading.Working;
import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.setup.SetupPart;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.Situation;
import beltmark.drawing.Drawing;
import beltmark.drawing.TapeCloseUp;
import beltmark.drawing.setup.SideElevation;
import beltmark.texts.Words;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Makes the drawings of each part; a part's own figures stand on them only once they may be told. */
final class PartDrawings {

    private final Situation situation;
    private final Working working;
    private final Set<SetupPart> told;
    private final Words words;

    /**
     * @param working how far the problem is worked
     * @param solved the parts whose answers may be told
     * @param words the reader's words
     */
    PartDrawings(Working working, Set<SetupPart> solved, Words words) {
        this.working = working;
        this.situation = working.problem().situation();
        this.words = words;
        this.told = EnumSet.noneOf(SetupPart.class);
        told.addAll(solved);
        Stream.of(SetupPart.BELT_MARK, SetupPart.ORIENTATION)
                .filter(part -> !isAsked(part))
                .forEach(told::add);
    }

    /** {@return the drawings of a part} */
    List<Drawing> of(SetupPart part) {
        SideElevation elevation = new SideElevation(situation, told);
        return switch (part) {
            case BELT_MARK -> List.of(tape(Side.LEFT), tape(Side.RIGHT));
            case ORIENTATION -> List.of(elevation.orientation(words));
            case MOUNT_MARK ->
                mounted().map(way -> List.of(elevation.mountMarks(way, words))).orElse(List.of());
            case SPRING_LENGTH -> List.of();
            case SLEEVE -> List.of(elevation.sleeve(words));
        };
    }

    private Drawing tape(Side side) {
        return new TapeCloseUp(
                        TapeCloseUp.Mark.BELT, side, situation.beltMarks().on(side))
                .drawing(told.contains(SetupPart.BELT_MARK), words);
    }

    /** The way round that the person believes in while the right one may not be told. */
    private Optional<Orientation> mounted() {
        Optional<Orientation> right = situation.orientation().chosen();
        if (told.contains(SetupPart.ORIENTATION)) {
            return right;
        }
        OwnFigures own = working.own();
        String believed = own.choice(Part.path(SetupPart.ORIENTATION.id(), "way"), "");
        return Stream.of(Orientation.values())
                .filter(way -> way.id().equals(believed))
                .findFirst();
    }

    private boolean isAsked(SetupPart part) {
        return working.problem().parts().stream().anyMatch(asked -> asked.id().equals(part.id()));
    }
}
