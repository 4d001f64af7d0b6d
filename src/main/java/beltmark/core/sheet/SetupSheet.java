package beltmark.core.sheet;

import beltmark.core.refusal.Refused;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * All numbers for one installation. Every formula is that of the class that computes the quantity; the sheet only puts
 * them in order, each from the one before.
 *
 * @param installation what was measured
 * @param mounting which way round, and the mount marks
 * @param springs the setting and the load
 * @param passing what happens over the splice
 * @param running pressure, wear and drag
 * @param across centring and pole
 */
public record SetupSheet(
        Installation installation,
        Mounting mounting,
        Springs springs,
        Passing passing,
        Running running,
        Across across) {

    /** {@return the sheet of an installation; never throws, each impossible quantity is refused by itself} */
    public static SetupSheet of(Installation installation) {
        Springs springs = Springs.of(installation);
        return new SetupSheet(
                installation,
                Mounting.of(installation),
                springs,
                Passing.of(installation, springs),
                Running.of(installation, springs.load()),
                Across.of(installation));
    }

    private Stream<Found<?>> all() {
        return Stream.of(mounting.all(), springs.all(), passing.all(), running.all(), across.all())
                .flatMap(List::stream);
    }

    /** {@return why quantities are missing, each reason once, in the order of the job} */
    public List<Refused> refusals() {
        Map<String, Refused> once = new LinkedHashMap<>();
        all().forEach(found -> {
            Refused refusal = found.refusal();
            if (refusal != null) {
                once.putIfAbsent(refusal.getMessage(), refusal);
            }
        });
        return List.copyOf(once.values());
    }

    /** {@return what is doubtful, each doubt once, in the order of the job} */
    public List<Warning> warnings() {
        return all().flatMap(found -> found.warnings().stream()).distinct().toList();
    }

    /** {@return the steps of the whole sheet, in the order in which one would work them by hand} */
    public List<Step> steps() {
        return all().flatMap(found -> found.steps().stream()).distinct().toList();
    }
}
