package beltmark.core.problem.bank.job;

import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.OrderBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Step;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The order of the whole installation: locking out and trying first, and some of the steps that follow. The order is
 * common practice, no published source.
 */
public final class InstallationOrder implements Recipe {

    private static final String PREFIX = "install-";
    private static final List<String> FIRST = List.of("install-lock-out", "install-try");
    private static final List<String> THEN = List.of(
            "install-clean",
            "install-belt-mark",
            "install-way-round",
            "install-mount-mark",
            "install-brackets",
            "install-pole",
            "install-centre",
            "install-angle",
            "install-springs",
            "install-sleeve",
            "install-lock-nuts",
            "install-bounce",
            "install-guards",
            "install-unlock",
            "install-run");

    private final FamilyRanges ranges;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public InstallationOrder(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        ranges.number("steps");
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        int more = (int) draw.number(ranges.number("steps")) - FIRST.size();
        Stream<String> drawn =
                draw.shuffled(THEN).subList(0, more).stream().sorted(Comparator.comparingInt(THEN::indexOf));
        List<String> order = Stream.concat(FIRST.stream(), drawn).toList();
        OrderBlank blank = sequence(order).blank(draw, PREFIX);
        if (blank.items().equals(order)) {
            return Optional.empty();
        }
        Map<String, Quantity> facts = new LinkedHashMap<>();
        List<Step> steps = new ArrayList<>();
        for (String step : order) {
            facts.put("place-" + (steps.size() + 1), JobScene.word(step));
            steps.add(
                    Step.of("why-" + step, "place", new Ratio(steps.size() + 1)).with("step", JobScene.word(step)));
        }
        return Optional.of(new Posed(
                new JobScene(Optional.empty(), facts),
                List.of(),
                List.of(new Part("install-sequence", List.of(), List.of(blank), steps))));
    }

    private static Sequence sequence(List<String> order) {
        return Sequence.of(order)
                .slip("work-before-lockout", order.get(2), "install-lock-out")
                .slip("brackets-before-marks", "install-brackets", "install-belt-mark")
                .slip("pole-before-marks", "install-pole", "install-belt-mark")
                .slip("springs-before-centre", "install-springs", "install-centre")
                .slip("springs-before-pole", "install-springs", "install-pole")
                .slip("tested-before-springs", "install-bounce", "install-springs")
                .slip("unlocked-before-test", "install-unlock", "install-bounce")
                .slip("run-before-guards", "install-run", "install-guards");
    }
}
