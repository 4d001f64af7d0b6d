package beltmark.core.problem.bank.spring;

import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Recipe;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Tip;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Mass;
import beltmark.core.units.Word;
import java.util.List;
import java.util.Optional;

/** The spring length for a wanted line load: the load, each spring's force, compression, coil, and the setting. */
public final class SpringLoad implements Recipe {

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public SpringLoad(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        ranges.number("lineLoad");
        ranges.number("buildUp");
        LoadParts.check(ranges);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Length blade =
                draw.oneOf(card.tip(draw.oneOf(List.of(Tip.values()))).chart()).blade();
        LineLoad wanted = new LineLoad(draw.number(ranges.number("lineLoad")));
        double buildUp = draw.number(ranges.number("buildUp"));
        Mass moving = new Mass(Math.rint(card.blade().moving(blade).kilograms()) + buildUp);
        LoadScene scene = new LoadScene(card, blade, moving, wanted);
        return canBeSet(scene) ? Optional.of(posed(scene)) : Optional.empty();
    }

    private static boolean canBeSet(LoadScene scene) {
        try {
            return scene.setting().warnings().isEmpty();
        } catch (Refused beyondTheSpring) {
            return false;
        }
    }

    private Posed posed(LoadScene scene) {
        LoadParts parts = new LoadParts(scene, ranges);
        return new Posed(
                scene,
                List.of(
                        new Given(
                                "card", new Word("hardware.name." + scene.card().id())),
                        new Given("load-wanted", scene.wanted()),
                        new Given("blade", scene.blade()),
                        new Given("load-moving", scene.moving()),
                        new Given("load-rate", scene.spring().rate()),
                        new Given("load-free", scene.spring().free()),
                        new Given("load-washer", scene.card().washer())),
                List.of(parts.load(), parts.each(), parts.compression(), parts.coil(), parts.setting()));
    }
}
