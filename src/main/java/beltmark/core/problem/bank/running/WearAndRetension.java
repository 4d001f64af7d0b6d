package beltmark.core.problem.bank.running;

import static beltmark.core.problem.bank.running.Asked.slip;

import beltmark.core.blade.BladeWear;
import beltmark.core.problem.Carry;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Solution;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import beltmark.core.units.SpringRate;
import beltmark.core.units.Time;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How much of the load is left when the tip has worn, how far it may wear, and after how many hours to re-tension. */
public final class WearAndRetension implements Recipe {

    private static final double THOUSAND_HOURS = 1000;
    private static final String LIMIT = "wear-limit";

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public WearAndRetension(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        List.of("load", "wear", "keep", "rate").forEach(ranges::number);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        SpringRate rate = card.spring().rate();
        Force load = new Force(draw.number(ranges.number("load")));
        Length wear = Length.ofMillimetres(draw.number(ranges.number("wear")));
        double keep = draw.number(ranges.number("keep"));
        Length perThousand = Length.ofMillimetres(draw.number(ranges.number("rate")));
        if (load.newtons() - 2 * rate.newtonsPerMillimetre() * wear.millimetres() < 0.2 * load.newtons()) {
            return Optional.empty();
        }
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("load", load);
        facts.put("rate", rate);
        facts.put("wear", wear);
        facts.put("keep", new Ratio(keep));
        facts.put("wear-per-1000-hours", perThousand);
        return Optional.of(new Posed(
                new RunningScene(Optional.of(card), Length.ZERO, Length.ZERO, facts),
                List.of(new Given("wear-load", load), new Given("wear-spring-rate", rate)),
                List.of(left(load, rate, wear), limit(load, rate, keep), hours(load, rate, keep, perThousand))));
    }

    private static Part left(Force load, SpringRate rate, Length wear) {
        Solution<Force> right = BladeWear.loadAfter(load, rate, wear);
        double lost = 2 * rate.newtonsPerMillimetre() * wear.millimetres();
        return new Part(
                "wear-load-left",
                List.of(new Given("wear-of-tip", wear)),
                List.of(Asked.number(
                        "left",
                        Asked.FORCE,
                        right.result().newtons(),
                        List.of(
                                slip("one-spring", load.newtons() - lost / 2),
                                slip("wear-added", load.newtons() + lost),
                                slip("lost-for-left", lost)),
                        Carry.none())),
                right.steps());
    }

    private static Part limit(Force load, SpringRate rate, double keep) {
        Solution<Length> right = BladeWear.toRetension(load, rate, keep);
        double millimetres = right.result().millimetres();
        return new Part(
                LIMIT,
                List.of(new Given("wear-keep", new Ratio(keep))),
                List.of(Asked.number(
                        "limit",
                        Asked.LENGTH,
                        millimetres,
                        List.of(
                                slip("one-spring", 2 * millimetres),
                                slip("kept-for-lost", millimetres * keep / (1 - keep)),
                                slip("four-springs", millimetres / 2)),
                        Carry.none())),
                right.steps());
    }

    private static Part hours(Force load, SpringRate rate, double keep, Length perThousand) {
        Length limit = BladeWear.toRetension(load, rate, keep).result();
        Solution<Time> right = BladeWear.hoursTo(limit, perThousand);
        double hours = right.result().seconds() / Time.ofHours(1).seconds();
        return new Part(
                "wear-hours",
                List.of(new Given("wear-per-thousand-hours", perThousand)),
                List.of(Asked.number(
                        "hours",
                        Asked.HOURS,
                        hours,
                        List.of(
                                slip("thousand-left-out", hours / THOUSAND_HOURS),
                                slip("multiplied", limit.millimetres() * perThousand.millimetres() * THOUSAND_HOURS),
                                slip("turned-over", perThousand.millimetres() / limit.millimetres() * THOUSAND_HOURS)),
                        own -> Optional.of(own.number(Part.path(LIMIT, "limit"), limit.millimetres())
                                / perThousand.millimetres()
                                * THOUSAND_HOURS))),
                right.steps());
    }
}
