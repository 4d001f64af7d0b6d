package beltmark.core.problem.bank.kit;

import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.NumberRange;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Tip;
import beltmark.core.units.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The kit on the tailgate against the kit list: what is missing, and what does not belong. */
public final class KitCheck implements Recipe {

    private static final List<String> WHOLE = List.of("pole", "blade");
    private static final List<String> EACH_SIDE = List.of(
            "bracket", "mounting-base", "bushing", "spring", "washer", "adjusting-nut", "lock-nut", "clamp-bolt");
    private static final List<String> OF_OTHER_JOBS =
            List.of("kit-idler-roller", "kit-skirt-rubber", "kit-belt-fastener", "kit-hose-clamp");
    private static final int MOST_SPARE = 2;

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public KitCheck(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        Stream.of(WHOLE, EACH_SIDE, List.of("missing", "spare", "foreign"))
                .flatMap(List::stream)
                .forEach(ranges::number);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Tip tip = draw.oneOf(List.of(Tip.values()));
        List<KitLine> lines = Stream.concat(
                        WHOLE.stream().map(kind -> line(kind, card, tip, false)),
                        EACH_SIDE.stream().map(kind -> line(kind, card, tip, true)))
                .toList();
        KitScene scene = new KitScene(card, tip, lines, lying(draw, lines, tip));
        return Optional.of(new Posed(
                scene,
                List.of(new Given("card", new Word("hardware.name." + card.id())), new Given("tip", tip.word())),
                List.of(KitParts.missing(scene), KitParts.foreign(scene))));
    }

    private KitLine line(String kind, HardwareCard card, Tip tip, boolean eachSide) {
        NumberRange asked = ranges.numbers().getOrDefault(kind + "-" + card.id(), ranges.number(kind));
        return new KitLine(kind.equals("blade") ? blade(tip) : "kit-" + kind, (int) asked.from(), eachSide);
    }

    private static String blade(Tip tip) {
        return "kit-blade-" + tip.id();
    }

    private Map<String, Integer> lying(Draw draw, List<KitLine> lines, Tip tip) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        int missing = (int) draw.number(ranges.number("missing"));
        int spare = (int) draw.number(ranges.number("spare"));
        for (KitLine line : draw.shuffled(lines)) {
            int count = line.needed();
            if (missing > 0) {
                count = draw.below(line.needed());
                missing--;
            } else if (spare > 0 && line.eachSide()) {
                count += 1 + draw.below(MOST_SPARE);
                spare--;
            }
            counts.put(line.option(), count);
        }
        List<String> others = new ArrayList<>(OF_OTHER_JOBS);
        others.add(blade(tip.other()));
        int foreign = (int) draw.number(ranges.number("foreign"));
        draw.shuffled(others).subList(0, foreign).forEach(other -> counts.put(other, 1));
        Map<String, Integer> lying = new LinkedHashMap<>();
        draw.shuffled(List.copyOf(counts.keySet()))
                .forEach(option -> lying.put(option, counts.getOrDefault(option, 0)));
        lying.values().removeIf(count -> count == 0);
        return lying;
    }
}
