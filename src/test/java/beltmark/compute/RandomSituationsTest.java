package beltmark.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Step;
import beltmark.core.units.Length;
import beltmark.core.units.Quantity;
import beltmark.core.units.Word;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Throws random input at every quantity: sensible, doubtful, impossible and absurd. */
class RandomSituationsTest {

    private static final double[] ABSURD = {
        0,
        -0.0,
        1e-9,
        -1e-9,
        1e-300,
        1e12,
        -1e12,
        1e300,
        Double.MAX_VALUE,
        Double.MIN_VALUE,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY,
        9.2e12,
        -9.2e12,
        1
    };

    private record Sample(Calculation<?> calculation, Given given) {}

    private static final Map<String, FieldNames> NAMES =
            Calculations.list().stream().collect(Collectors.toMap(Calculation::name, FieldNames::new));

    private static List<Sample> samples() {
        List<Sample> samples = new ArrayList<>();
        for (JsonNode line : SampleLines.all()) {
            Calculation<?> calculation =
                    Calculations.find(line.path("quantity").textValue()).orElseThrow();
            samples.add(new Sample(calculation, new GivenReader(names(calculation)).read(line.path("given"))));
        }
        return samples;
    }

    private static FieldNames names(Calculation<?> calculation) {
        return Objects.requireNonNull(NAMES.get(calculation.name()));
    }

    @Test
    void aMillionSituationsGiveNumbersOrNamedRefusals() {
        List<Sample> samples = samples();
        SplittableRandom random = new SplittableRandom(20260101);
        Map<String, Integer> refusals = new HashMap<>();
        int answered = 0;
        for (int i = 0; i < 1_000_000; i++) {
            Sample sample = samples.get(random.nextInt(samples.size()));
            try {
                check(sample.calculation.compute(mutated(sample, random)));
                answered++;
            } catch (Refused refused) {
                refusals.merge(refused.refusal().name(), 1, Integer::sum);
            }
        }
        assertTrue(answered > 200_000, () -> "too few answers, the rest " + refusals);
        assertTrue(refusals.size() > 15, () -> "too few kinds of refusals: " + refusals);
    }

    private static void check(Computed computed) {
        computed.figures().values().forEach(RandomSituationsTest::checkNumber);
        for (Step step : computed.steps()) {
            step.values().values().forEach(RandomSituationsTest::checkNumber);
        }
    }

    private static void checkNumber(Quantity figure) {
        assertTrue(figure instanceof Word || Double.isFinite(figure.amount()), figure::toString);
    }

    private static Given mutated(Sample sample, SplittableRandom random) {
        Map<String, Object> values = new LinkedHashMap<>(sample.given.values());
        for (Field field : sample.calculation.fields()) {
            Object value = values.get(field.name());
            if (value instanceof Quantity quantity && random.nextInt(3) == 0) {
                values.put(field.name(), mutated(field.kind(), quantity, random));
            }
        }
        return new Given(values);
    }

    private static Quantity mutated(Kind kind, Quantity quantity, SplittableRandom random) {
        double amount = random.nextInt(12) == 0
                ? ABSURD[random.nextInt(ABSURD.length)]
                : quantity.amount() * (random.nextInt(20) == 0 ? -1 : 1) * (0.5 + random.nextDouble());
        return kind.units().stream()
                .filter(unit -> unit.symbol().equals(quantity.unit()))
                .findFirst()
                .orElse(kind.units().get(0))
                .reader()
                .apply(amount);
    }

    @Test
    void inchesAndMillimetresGiveTheSameAnswerAndTheSameRefusal() {
        List<ObjectNode> lines = SampleLines.all();
        SplittableRandom random = new SplittableRandom(20260102);
        int withLengths = 0;
        for (int i = 0; i < 30_000; i++) {
            ObjectNode line = lines.get(random.nextInt(lines.size()));
            Calculation<?> calculation =
                    Calculations.find(line.path("quantity").textValue()).orElseThrow();
            ObjectNode millimetres = line.objectNode();
            ObjectNode inches = line.objectNode();
            line.path("given").properties().forEach(entry -> {
                FieldNames.Named named = names(calculation).find(entry.getKey()).orElseThrow();
                if (named.field().kind() == Kind.LENGTH) {
                    long sixteenths = sixteenths(named, entry.getValue(), random);
                    millimetres.put(named.field().name() + "Mm", sixteenths * 1.5875);
                    inches.put(named.field().name() + "In", sixteenths / 16.0);
                } else {
                    millimetres.set(entry.getKey(), entry.getValue());
                    inches.set(entry.getKey(), entry.getValue());
                }
            });
            withLengths += inches.equals(millimetres) ? 0 : 1;
            assertEquals(told(calculation, millimetres), told(calculation, inches), line::toString);
        }
        assertTrue(withLengths > 10_000);
    }

    /** The length of a row to the nearest sixteenth, changed, so that both units say it exactly. */
    private static long sixteenths(FieldNames.Named named, JsonNode value, SplittableRandom random) {
        double amount = value.isTextual() ? 0.25 : value.doubleValue();
        Length length = (Length) named.unit().reader().apply(amount);
        double factor = random.nextInt(10) == 0 ? random.nextInt(-1, 3) * 1e3 : 0.7 + 0.6 * random.nextDouble();
        return Math.round(length.inches() * 16 * factor);
    }

    private static String told(Calculation<?> calculation, JsonNode given) {
        try {
            Computed computed = calculation.compute(new GivenReader(names(calculation)).read(given));
            return computed.figures() + " " + computed.warnings();
        } catch (Refused refused) {
            return refused.refusal().name();
        }
    }
}
