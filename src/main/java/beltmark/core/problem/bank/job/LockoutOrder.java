package beltmark.core.problem.bank.job;

import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Draw;
import beltmark.core.problem.Exhibit;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.problem.SeveralBlank;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Step;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Locking out a conveyor: the order of the steps, what can still move with the motor locked, and how long verifying goes
 * on. Source: 29 CFR 1910.147(d)(1)-(6) (seen). The site's written procedure decides, and this says so.
 */
public final class LockoutOrder implements Recipe {

    private static final List<String> ORDER =
            List.of("lo-prepare", "lo-shut-down", "lo-isolate", "lo-lock", "lo-relieve", "lo-verify");

    private final FamilyRanges ranges;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public LockoutOrder(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        Waiting.RANGES.forEach(ranges::number);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        List<Waiting> waiting = new ArrayList<>();
        for (Waiting.Kind kind : Waiting.Kind.values()) {
            Waiting one = Waiting.of(kind, draw, ranges, draw.below(2) == 0);
            waiting.add(one);
            facts.put(kind.option() + "-size", one.size());
            facts.put(kind.option() + "-state", one.state());
        }
        OrderBlank order = Sequence.of(ORDER)
                .slip("locked-before-shut-down", "lo-lock", "lo-shut-down")
                .slip("verified-before-locked", "lo-verify", "lo-lock")
                .slip("verified-first", "lo-verify", "lo-prepare")
                .slip("relieved-before-isolated", "lo-relieve", "lo-isolate")
                .slip("isolated-first", "lo-isolate", "lo-prepare")
                .blank(draw, "lo-");
        long charged = waiting.stream().filter(Waiting::holds).count();
        if (charged == 0 || charged == waiting.size() || order.items().equals(ORDER)) {
            return Optional.empty();
        }
        return Optional.of(new Posed(
                new JobScene(Optional.empty(), facts),
                List.of(),
                List.of(new Part("lo-sequence", List.of(), List.of(order), steps()), moving(waiting), verifying())));
    }

    private static List<Step> steps() {
        return ORDER.stream()
                .map(step -> Step.of("why-" + step, "place", new Ratio(ORDER.indexOf(step) + 1))
                        .with("step", JobScene.word(step)))
                .toList();
    }

    private static Part moving(List<Waiting> waiting) {
        Set<String> right = waiting.stream()
                .filter(Waiting::holds)
                .map(one -> one.kind().option())
                .collect(Collectors.toSet());
        Map<String, String> picks = waiting.stream()
                .collect(Collectors.toMap(
                        one -> one.kind().option(),
                        one -> (one.holds() ? "left-out-" : "empty-")
                                + one.kind().option().substring("lo-".length())));
        List<List<Quantity>> rows = waiting.stream()
                .map(one -> List.of(
                        JobScene.word(one.kind().option()),
                        JobScene.word(one.kind().option() + "-measured"),
                        one.size(),
                        one.state()))
                .toList();
        return new Part(
                "lo-moving",
                List.of(),
                List.of(new Exhibit("lo-found", List.of("lo-what", "lo-measured", "lo-size", "lo-state"), rows)),
                List.of(new SeveralBlank(
                        "moving",
                        Stream.of(Waiting.Kind.values())
                                .map(Waiting.Kind::option)
                                .toList(),
                        right,
                        Map.of(),
                        picks)),
                waiting.stream().map(LockoutOrder::step).toList());
    }

    private static Step step(Waiting one) {
        return Step.of(one.holds() ? "lo-holds" : "lo-reads-nought", "size", one.size())
                .with("state", one.state())
                .with("source", JobScene.word(one.kind().option()));
    }

    private static Part verifying() {
        return new Part(
                "lo-verifying",
                List.of(),
                List.of(new ChoiceBlank(
                        "until",
                        List.of("lo-once", "lo-each-shift", "lo-until-finished", "lo-by-radio"),
                        "lo-until-finished",
                        Map.of("lo-once", "once", "lo-each-shift", "each-shift", "lo-by-radio", "by-radio"))),
                List.of(Step.of("lo-verifying", "until", JobScene.word("lo-until-finished"))));
    }
}
