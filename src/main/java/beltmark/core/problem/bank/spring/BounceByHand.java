package beltmark.core.problem.bank.spring;

import beltmark.core.blade.Bounce;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Side;
import beltmark.core.setup.Tip;
import beltmark.core.units.Force;
import beltmark.core.units.Frequency;
import beltmark.core.units.Length;
import beltmark.core.units.Mass;
import beltmark.core.units.Ratio;
import beltmark.core.units.Word;
import java.util.List;
import java.util.Optional;

/** What a push by hand tells: how fast the cleaner should swing, what friction hides, and what is behind what is seen. */
public final class BounceByHand implements Recipe {

    private static final double FORCE_STEP = 10;

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public BounceByHand(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        List.of("buildUp", "lineLoad", "friction", "caked").forEach(ranges::number);
        ranges.length("short");
        BounceParts.check(ranges);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Length blade =
                draw.oneOf(card.tip(draw.oneOf(List.of(Tip.values()))).chart()).blade();
        Mass mass = new Mass(Math.rint(card.blade().moving(blade).kilograms()) + draw.number(ranges.number("buildUp")));
        double load = draw.number(ranges.number("lineLoad")) * blade.millimetres();
        Force net = new Force(Math.rint(load / FORCE_STEP) * FORCE_STEP);
        Ratio friction = new Ratio(draw.number(ranges.number("friction")));
        BounceScene scene = new BounceScene(card, mass, net, friction, seen(draw, card, mass));
        BounceParts parts = new BounceParts(scene, ranges);
        return Optional.of(new Posed(
                scene,
                List.of(new Given("card", new Word("hardware.name." + card.id()))),
                List.of(parts.frequency(), parts.band(), parts.cause(), parts.remedy())));
    }

    private BounceScene.Seen seen(Draw draw, HardwareCard card, Mass mass) {
        Finding finding = draw.oneOf(List.of(Finding.values()));
        Side side = draw.oneOf(List.of(Side.values()));
        double caked = draw.number(ranges.number("caked"));
        Length missing = draw.length(ranges.length("short"));
        Mass swinging = finding == Finding.BUILD_UP ? new Mass(mass.kilograms() * (1 + caked)) : mass;
        Frequency both =
                Bounce.frequency(card.spring().rate(), swinging, new Mass(0)).result();
        // one slack spring leaves half the rate: as fast as with twice the mass
        Frequency one = Bounce.frequency(card.spring().rate(), new Mass(2 * mass.kilograms()), new Mass(0))
                .result();
        return new BounceScene.Seen(
                finding,
                side,
                finding == Finding.SLACK ? one : both,
                finding == Finding.BLOCKED ? card.sleeve().minus(missing) : card.sleeve());
    }
}
