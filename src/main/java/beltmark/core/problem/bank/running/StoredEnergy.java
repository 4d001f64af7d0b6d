package beltmark.core.problem.bank.running;

import static beltmark.core.problem.bank.running.Asked.slip;

import beltmark.core.energy.Capacitor;
import beltmark.core.energy.CompressedAir;
import beltmark.core.energy.SpringEnergy;
import beltmark.core.energy.TakeUp;
import beltmark.core.problem.Carry;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.setup.HardwareCard;
import beltmark.core.solution.Solution;
import beltmark.core.units.Capacitance;
import beltmark.core.units.Energy;
import beltmark.core.units.Length;
import beltmark.core.units.Mass;
import beltmark.core.units.Pressure;
import beltmark.core.units.Quantity;
import beltmark.core.units.Resistance;
import beltmark.core.units.SpringRate;
import beltmark.core.units.Time;
import beltmark.core.units.Voltage;
import beltmark.core.units.Volume;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What energy waits at a conveyor after the power is off: weight, springs, air and a charged drive. */
public final class StoredEnergy implements Recipe {

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public StoredEnergy(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        List.of("mass", "height", "compression", "air", "receiver", "millifarads", "volts", "limit", "kilohms")
                .forEach(ranges::number);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Mass mass = new Mass(draw.number(ranges.number("mass")));
        Length height = Length.ofMillimetres(draw.number(ranges.number("height")));
        Length compression = Length.ofMillimetres(draw.number(ranges.number("compression")));
        Pressure gauge = new Pressure(draw.number(ranges.number("air")));
        Volume receiver = new Volume(draw.number(ranges.number("receiver")));
        Capacitance capacitance = Capacitance.ofMillifarads(draw.number(ranges.number("millifarads")));
        Voltage volts = new Voltage(draw.number(ranges.number("volts")));
        Voltage limit = new Voltage(draw.number(ranges.number("limit")));
        Resistance bleed = Resistance.ofKilohms(draw.number(ranges.number("kilohms")));
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("mass", mass);
        facts.put("height", height);
        facts.put("compression", compression);
        facts.put("gauge", gauge);
        facts.put("receiver", receiver);
        facts.put("capacitance", capacitance);
        facts.put("volts", volts);
        facts.put("limit", limit);
        facts.put("bleed", bleed);
        return Optional.of(new Posed(
                new RunningScene(Optional.of(card), Length.ZERO, Length.ZERO, facts),
                List.of(),
                List.of(
                        weight(mass, height),
                        springs(card.spring().rate(), compression),
                        air(gauge, receiver),
                        waiting(bleed, capacitance, volts, limit))));
    }

    private static Part weight(Mass mass, Length height) {
        Solution<TakeUp> right = TakeUp.of(mass, height);
        double joules = right.result().energy().joules();
        return new Part(
                "energy-weight",
                List.of(new Given("energy-mass", mass), new Given("energy-height", height)),
                List.of(Asked.number(
                        "energy",
                        Asked.ENERGY,
                        joules,
                        List.of(
                                slip("gravity-left-out", joules / Mass.STANDARD_GRAVITY),
                                slip("one-strand", joules / 2),
                                slip("height-left-out", mass.kilograms() * Mass.STANDARD_GRAVITY)),
                        Carry.none())),
                right.steps().subList(0, 2));
    }

    private static Part springs(SpringRate rate, Length compression) {
        Solution<Energy> right = SpringEnergy.of(rate, compression, 2);
        double joules = right.result().joules();
        return new Part(
                "energy-springs",
                List.of(new Given("wear-spring-rate", rate), new Given("energy-compression", compression)),
                List.of(Asked.number(
                        "energy",
                        Asked.ENERGY,
                        joules,
                        List.of(
                                slip("one-spring", joules / 2),
                                slip("half-left-out", joules * 2),
                                slip("not-squared", rate.newtonsPerMillimetre() * compression.millimetres())),
                        Carry.none())),
                right.steps());
    }

    private static Part air(Pressure gauge, Volume volume) {
        Pressure outside = CompressedAir.ATMOSPHERE;
        Solution<Energy> right = CompressedAir.receiver(gauge, outside, volume);
        Pressure less = new Pressure(gauge.megapascals() - outside.megapascals());
        return new Part(
                "energy-air",
                List.of(new Given("energy-gauge", gauge), new Given("energy-receiver", volume)),
                List.of(Asked.number(
                        "energy",
                        Asked.ENERGY,
                        right.result().joules(),
                        List.of(
                                slip(
                                        "gauge-for-absolute",
                                        CompressedAir.receiver(less, outside, volume)
                                                .result()
                                                .joules()),
                                slip("pressure-times-volume", gauge.megapascals() * volume.litres() * 1000)),
                        Carry.none())),
                right.steps());
    }

    private static Part waiting(Resistance bleed, Capacitance capacitance, Voltage from, Voltage to) {
        Solution<Time> right = Capacitor.time(bleed, capacitance, from, to);
        double constant = bleed.ohms() * capacitance.farads();
        double seconds = right.result().seconds();
        return new Part(
                "energy-waiting",
                List.of(
                        new Given("energy-bleed", bleed),
                        new Given("energy-capacitance", capacitance),
                        new Given("energy-volts", from),
                        new Given("energy-limit", to)),
                List.of(Asked.number(
                        "time",
                        Asked.SECONDS,
                        seconds,
                        List.of(
                                slip("one-time-constant", constant),
                                slip("common-logarithm", constant * Math.log10(from.volts() / to.volts())),
                                slip("ratio-for-logarithm", constant * from.volts() / to.volts())),
                        Carry.none())),
                right.steps());
    }
}
