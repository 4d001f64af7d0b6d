package beltmark.drawing.problem;

import beltmark.core.problem.Part;
import beltmark.core.problem.setup.SetupPart;
import beltmark.core.problem.setup.SetupScene;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.Situation;
import beltmark.drawing.Drawing;
import beltmark.drawing.TapeCloseUp;
import beltmark.drawing.setup.SideElevation;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Draws the parts of a set-up. */
final class SetupDrawer implements PartDrawer<SetupScene> {

    @Override
    public List<Drawing> draw(SetupScene scene, Part part, Telling telling) {
        Situation situation = scene.situation();
        Set<SetupPart> told = told(telling);
        SideElevation elevation = new SideElevation(situation, told);
        return SetupPart.find(part.id())
                .map(known -> switch (known) {
                    case BELT_MARK ->
                        Stream.of(Side.values())
                                .map(side -> tape(situation, side, told, telling))
                                .toList();
                    case ORIENTATION -> List.of(elevation.orientation(telling.words()));
                    case MOUNT_MARK ->
                        mounted(situation, told, telling)
                                .map(way -> List.of(elevation.mountMarks(way, telling.words())))
                                .orElse(List.of());
                    case SPRING_LENGTH ->
                        List.of(SpringDrawers.setting(
                                situation.springSetting(),
                                situation.card().spring().freeLength(),
                                told.contains(known),
                                telling));
                    case SLEEVE -> List.of(elevation.sleeve(telling.words()));
                })
                .orElse(List.of());
    }

    /** What earlier parts would have found is told where those parts are not asked. */
    private static Set<SetupPart> told(Telling telling) {
        Set<SetupPart> told = EnumSet.noneOf(SetupPart.class);
        for (SetupPart part : SetupPart.values()) {
            boolean givenAway = part == SetupPart.BELT_MARK || part == SetupPart.ORIENTATION;
            if (telling.solved().contains(part.id()) || (givenAway && !telling.asks(part.id()))) {
                told.add(part);
            }
        }
        return told;
    }

    private static Drawing tape(Situation situation, Side side, Set<SetupPart> told, Telling telling) {
        return new TapeCloseUp(
                        TapeCloseUp.Mark.BELT, side, situation.beltMarks().on(side))
                .drawing(told.contains(SetupPart.BELT_MARK), telling.words());
    }

    /** The way round that the person believes in while the right one may not be told. */
    private static Optional<Orientation> mounted(Situation situation, Set<SetupPart> told, Telling telling) {
        if (told.contains(SetupPart.ORIENTATION)) {
            return situation.orientation().chosen();
        }
        String believed = telling.own().choice(Part.path(SetupPart.ORIENTATION.id(), "way"), "");
        return Stream.of(Orientation.values())
                .filter(way -> way.id().equals(believed))
                .findFirst();
    }
}
