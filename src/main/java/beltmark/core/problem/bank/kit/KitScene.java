package beltmark.core.problem.bank.kit;

import beltmark.core.problem.Scene;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Tip;
import beltmark.core.units.Quantity;
import beltmark.core.units.Ratio;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A kit list and what lies on the tailgate.
 *
 * @param card the hardware
 * @param tip the tip that the job asks for
 * @param lines the kit list
 * @param lying how many lie there, at least 1 each, by option id, in the order they lie in
 */
record KitScene(HardwareCard card, Tip tip, List<KitLine> lines, Map<String, Integer> lying) implements Scene {

    KitScene {
        lines = List.copyOf(lines);
        lying = Collections.unmodifiableMap(new LinkedHashMap<>(lying));
    }

    int lying(KitLine line) {
        return lying.getOrDefault(line.option(), 0);
    }

    /** {@return the lines of which too few lie there} */
    List<KitLine> tooFew() {
        return lines.stream().filter(line -> lying(line) < line.needed()).toList();
    }

    /** {@return the lines of which more lie there than needed} */
    List<KitLine> spare() {
        return lines.stream().filter(line -> lying(line) > line.needed()).toList();
    }

    /** {@return what lies there and is on no line, by option id} */
    List<String> foreign() {
        List<String> listed = lines.stream().map(KitLine::option).toList();
        return lying.keySet().stream()
                .filter(option -> !listed.contains(option))
                .toList();
    }

    @Override
    public Optional<HardwareCard> findCard() {
        return Optional.of(card);
    }

    @Override
    public Map<String, Quantity> facts() {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("tip", tip.word());
        Stream.concat(lines.stream().map(KitLine::option), lying.keySet().stream())
                .distinct()
                .forEach(option -> facts.put(option, new Ratio(lying.getOrDefault(option, 0))));
        return facts;
    }
}
