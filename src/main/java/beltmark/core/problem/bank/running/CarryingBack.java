package beltmark.core.problem.bank.running;

import static beltmark.core.problem.bank.running.Asked.slip;

import beltmark.core.carryback.Carryback;
import beltmark.core.carryback.CleaningEfficiency;
import beltmark.core.problem.Carry;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Solution;
import beltmark.core.units.Coverage;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import beltmark.core.units.Speed;
import beltmark.core.units.Time;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a belt carries back past its cleaners: by the hour, how well they clean, and what comes together in a week. */
public final class CarryingBack implements Recipe {

    private static final double WHOLE = 100;
    private static final double HOURS_OF_A_WEEK = 7 * 24;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double KILOGRAMS_PER_TONNE = 1000;
    private static final String HOURLY = "carryback-hourly";
    private static final String HOURLY_BLANK = "hourly";

    private final FamilyRanges ranges;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public CarryingBack(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        ranges.length("dirtyWidth");
        ranges.length("cleanEdges");
        List.of("after", "taken", "second", "speed", "running").forEach(ranges::number);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        Coverage after = new Coverage(draw.number(ranges.number("after")));
        Coverage before = new Coverage(after.gramsPerSquareMetre() + draw.number(ranges.number("taken")));
        double second = draw.number(ranges.number("second")) / WHOLE;
        Length dirty = draw.length(ranges.length("dirtyWidth"));
        Length belt = dirty.plus(draw.length(ranges.length("cleanEdges")));
        Speed speed = new Speed(draw.number(ranges.number("speed")));
        Time running = Time.ofHours(draw.number(ranges.number("running")));
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("before", before);
        facts.put("after", after);
        facts.put("dirty-width", dirty);
        facts.put("belt-width", belt);
        facts.put("speed", speed);
        facts.put("running", running);
        facts.put("second-cleaner", new Ratio(second));
        return Optional.of(new Posed(
                new RunningScene(Optional.empty(), belt, dirty, facts),
                List.of(
                        new Given("carryback-before", before),
                        new Given("carryback-after", after),
                        new Given("running-belt-width", belt),
                        new Given("carryback-dirty-width", dirty),
                        new Given("running-speed", speed)),
                List.of(
                        hourly(after, before, dirty, belt, speed),
                        week(Carryback.of(after, dirty, speed, running), running),
                        efficiency(before, after),
                        together(before, after, second))));
    }

    private static double hourly(Coverage left, Length width, Speed speed) {
        return Carryback.of(left, width, speed, Time.ofHours(1))
                .result()
                .hourly()
                .kilogramsPerHour();
    }

    private static Part hourly(Coverage after, Coverage before, Length dirty, Length belt, Speed speed) {
        Solution<Carryback> right = Carryback.of(after, dirty, speed, Time.ofHours(1));
        double amount = right.result().hourly().kilogramsPerHour();
        return new Part(
                HOURLY,
                List.of(),
                List.of(Asked.number(
                        HOURLY_BLANK,
                        Asked.FLOW,
                        amount,
                        List.of(
                                slip("belt-width", hourly(after, belt, speed)),
                                slip("before-for-after", hourly(before, dirty, speed)),
                                slip("minute-for-hour", amount / SECONDS_PER_MINUTE),
                                slip("metres-per-minute", amount * SECONDS_PER_MINUTE)),
                        Carry.none())),
                right.steps().subList(0, 1));
    }

    private static Part week(Solution<Carryback> right, Time running) {
        double hourly = right.result().hourly().kilogramsPerHour();
        double hours = running.seconds() / Time.ofHours(1).seconds();
        double tonnes = right.result().total().kilograms() / KILOGRAMS_PER_TONNE;
        return new Part(
                "carryback-week",
                List.of(new Given("carryback-running", running)),
                List.of(Asked.number(
                        "week",
                        Asked.MASS,
                        tonnes,
                        List.of(
                                slip("all-hours", hourly * HOURS_OF_A_WEEK / KILOGRAMS_PER_TONNE),
                                slip("one-day", hourly * 24 / KILOGRAMS_PER_TONNE),
                                slip("kilograms-for-tonnes", tonnes * KILOGRAMS_PER_TONNE)),
                        own -> Optional.of(
                                own.number(Part.path(HOURLY, HOURLY_BLANK), hourly) * hours / KILOGRAMS_PER_TONNE))),
                right.steps().subList(1, 2));
    }

    private static Part efficiency(Coverage before, Coverage after) {
        Solution<Ratio> right = CleaningEfficiency.of(before, after);
        double left = after.gramsPerSquareMetre() / before.gramsPerSquareMetre();
        return new Part(
                "carryback-efficiency",
                List.of(),
                List.of(Asked.number(
                        "efficiency",
                        Asked.PERCENT,
                        WHOLE * right.result().value(),
                        List.of(
                                slip("what-is-left", WHOLE * left),
                                slip("divided-by-after", WHOLE * (1 / left - 1)),
                                slip("taken-as-percent", before.gramsPerSquareMetre() - after.gramsPerSquareMetre())),
                        Carry.none())),
                right.steps());
    }

    private static Part together(Coverage before, Coverage after, double second) {
        double first = CleaningEfficiency.of(before, after).result().value();
        Solution<Ratio> right = CleaningEfficiency.inSeries(List.of(first, second));
        String path = Part.path("carryback-efficiency", "efficiency");
        return new Part(
                "carryback-together",
                List.of(new Given("carryback-second", new Ratio(second))),
                List.of(Asked.number(
                        "together",
                        Asked.PERCENT,
                        WHOLE * right.result().value(),
                        List.of(
                                slip("added", WHOLE * (first + second)),
                                slip("multiplied", WHOLE * first * second),
                                slip("mean", WHOLE * (first + second) / 2),
                                slip("second-alone", WHOLE * second)),
                        own -> Optional.of(WHOLE
                                * (1 - (1 - own.number(path, WHOLE * first) / WHOLE) * (1 - second))))),
                right.steps());
    }
}
