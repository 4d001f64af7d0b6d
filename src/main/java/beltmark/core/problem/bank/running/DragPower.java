package beltmark.core.problem.bank.running;

import static beltmark.core.problem.bank.running.Asked.slip;

import beltmark.core.blade.Drag;
import beltmark.core.problem.Carry;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Tip;
import beltmark.core.solution.Solution;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import beltmark.core.units.Speed;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How hard a blade drags on the belt, and what power that takes. */
public final class DragPower implements Recipe {

    private static final double SECONDS_PER_MINUTE = 60;
    private static final String DRAG = "drag-force";
    private static final String FORCE = "force";

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public DragPower(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        ranges.length("blade");
        ranges.length("edges");
        List.of("friction", "speed", "lineLoad").forEach(ranges::number);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Tip tip = draw.oneOf(List.of(Tip.values()));
        Length blade = draw.length(ranges.length("blade"));
        Length belt = blade.plus(draw.length(ranges.length("edges")));
        LineLoad lineLoad = new LineLoad(draw.number(ranges.number("lineLoad")));
        Ratio friction = new Ratio(draw.number(ranges.number("friction")));
        Speed speed = new Speed(draw.number(ranges.number("speed")));
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("tip", tip.word());
        facts.put("blade", blade);
        facts.put("belt-width", belt);
        facts.put("line-load", lineLoad);
        facts.put("friction", friction);
        facts.put("speed", speed);
        return Optional.of(new Posed(
                new RunningScene(Optional.of(card), belt, blade, facts),
                List.of(
                        new Given("blade", blade),
                        new Given("running-belt-width", belt),
                        new Given("drag-line-load", lineLoad),
                        new Given("drag-friction", friction),
                        new Given("running-speed", speed)),
                List.of(force(lineLoad, blade, belt, friction, speed), power(lineLoad, blade, friction, speed))));
    }

    private static double load(LineLoad lineLoad, Length width) {
        return lineLoad.newtonsPerMillimetre() * width.millimetres();
    }

    private static Part force(LineLoad lineLoad, Length blade, Length belt, Ratio friction, Speed speed) {
        double load = load(lineLoad, blade);
        Solution<Drag> right = Drag.of(new Force(load), friction, speed);
        return new Part(
                DRAG,
                List.of(),
                List.of(Asked.number(
                        FORCE,
                        Asked.FORCE,
                        right.result().force().newtons(),
                        List.of(
                                slip("friction-left-out", load),
                                slip("belt-width", load(lineLoad, belt) * friction.value()),
                                slip("divided-by-friction", load / friction.value())),
                        Carry.none())),
                right.steps().subList(0, 1));
    }

    private static Part power(LineLoad lineLoad, Length blade, Ratio friction, Speed speed) {
        double load = load(lineLoad, blade);
        Solution<Drag> right = Drag.of(new Force(load), friction, speed);
        double watts = right.result().power().watts();
        double newtons = right.result().force().newtons();
        return new Part(
                "drag-power",
                List.of(),
                List.of(Asked.number(
                        "power",
                        Asked.POWER,
                        watts,
                        List.of(
                                slip("load-for-drag", load * speed.metresPerSecond()),
                                slip("metres-per-minute", watts * SECONDS_PER_MINUTE),
                                slip("divided-by-speed", newtons / speed.metresPerSecond())),
                        own -> Optional.of(own.number(Part.path(DRAG, FORCE), newtons) * speed.metresPerSecond()))),
                right.steps().subList(1, 2));
    }
}
