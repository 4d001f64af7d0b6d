package beltmark.compute;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.measure.Unit;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Compares with published numbers, and with right and wrong answers worked out otherwise; each row names its source. */
class TableTest {

    @ParameterizedTest(name = "{0} {1}: {4} ({6})")
    @CsvFileSource(
            resources = {"/compute/published-examples.csv", "/compute/right-and-wrong.csv", "/compute/other-samples.csv"
            },
            delimiter = ';',
            numLinesToSkip = 1)
    void agrees(
            String quantity,
            String given,
            String field,
            @Nullable String unit,
            double printed,
            double tolerance,
            String source) {
        JsonNode answer = SampleLines.answer(SampleLines.line(quantity, given));
        assertTrue(answer.has(field), () -> source + ": " + answer);
        double value = answer.get(field).doubleValue();
        String own = SampleLines.unitOf(quantity, field);
        double told = unit == null || unit.equals(own) || own.isEmpty() ? value : convert(value, own, unit);
        assertEquals(printed, told, tolerance + 1e-9 * Math.abs(printed), source);
    }

    private static double convert(double value, String from, String to) {
        return unit(from).convert(value, unit(to)).result().amount();
    }

    private static Unit unit(String symbol) {
        return Stream.of(Unit.values())
                .filter(unit -> unit.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyQuantityHasARow() {
        Set<String> sampled = SampleLines.all().stream()
                .map(line -> line.path("quantity").textValue())
                .collect(Collectors.toSet());
        List<String> missing = Calculations.list().stream()
                .map(Calculation::name)
                .filter(name -> !sampled.contains(name))
                .toList();
        assertEquals(List.of(), missing);
    }

    @Test
    void figuresHaveTheNamesAndUnitsOfTheList() {
        for (JsonNode line : SampleLines.all()) {
            Calculation<?> calculation =
                    Calculations.find(line.path("quantity").textValue()).orElseThrow();
            Computed computed =
                    calculation.compute(new GivenReader(new FieldNames(calculation)).read(line.path("given")));
            computed.figures().forEach((name, figure) -> {
                if (!calculation.name().equals("convert")) {
                    assertEquals(SampleLines.unitOf(calculation.name(), name), figure.unit(), line.toString());
                }
            });
        }
    }
}
