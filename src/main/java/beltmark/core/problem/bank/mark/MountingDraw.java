package beltmark.core.problem.bank.mark;

import beltmark.core.problem.Draw;
import beltmark.core.problem.Given;
import beltmark.core.problem.bank.mark.CupScene.Mounting;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Tip;
import beltmark.core.setup.TipCard;
import beltmark.core.units.Length;
import beltmark.core.units.Word;
import java.util.List;
import java.util.stream.Stream;

/** Draws what is fitted, and tells it. */
final class MountingDraw {

    private MountingDraw() {}

    static Mounting next(Draw draw, List<HardwareCard> cards) {
        HardwareCard card = draw.oneOf(cards);
        Tip tip = draw.oneOf(List.of(Tip.values()));
        Orientation way = draw.oneOf(List.of(Orientation.values()));
        TipCard.Setting setting = draw.oneOf(card.tip(tip).chart());
        return new Mounting(card, tip, way, setting.blade());
    }

    static Length eitherWay(Draw draw, Length length) {
        return draw.below(2) == 0 ? length : length.negated();
    }

    static List<Given> givens(Mounting mounting) {
        return List.of(
                new Given("card", new Word("hardware.name." + mounting.card().id())),
                new Given("tip", mounting.tip().word()),
                new Given("orientation", mounting.way().word()),
                new Given("blade", mounting.blade()));
    }

    /** The card's offsets for every tip and orientation: picking the one that applies is part of the job. */
    static List<Given> offsets(HardwareCard card) {
        return Stream.of(Tip.values())
                .flatMap(tip -> Stream.of(Orientation.values())
                        .map(way -> new Given("offset-" + tip.id() + "-" + way.id(), card.mountOffset(tip, way))))
                .toList();
    }
}
