package beltmark.compute;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Everything that can be computed, by name. */
final class Calculations {

    private static final List<Calculation<?>> ALL = Stream.of(
                    SpringCalculations.all(),
                    BladeLoadCalculations.all(),
                    BladeCalculations.all(),
                    SetupCalculations.all(),
                    GeometryCalculations.all(),
                    MeasureCalculations.all(),
                    EnergyCalculations.all(),
                    CarrybackCalculations.all())
            .<Calculation<?>>flatMap(List::stream)
            .toList();
    private static final Map<String, Calculation<?>> BY_NAME = byName();

    private Calculations() {}

    static List<Calculation<?>> list() {
        return ALL;
    }

    /** Finds one by its name or another name of it. */
    static Optional<Calculation<?>> find(String name) {
        return Optional.ofNullable(BY_NAME.get(name));
    }

    private static Map<String, Calculation<?>> byName() {
        Map<String, Calculation<?>> names = new LinkedHashMap<>();
        for (Calculation<?> calculation : ALL) {
            put(names, calculation.name(), calculation);
            calculation.aliases().forEach(alias -> put(names, alias, calculation));
        }
        return names;
    }

    private static void put(Map<String, Calculation<?>> names, String name, Calculation<?> calculation) {
        if (names.put(name, calculation) != null) {
            throw new IllegalStateException("two quantities are called " + name);
        }
    }
}
