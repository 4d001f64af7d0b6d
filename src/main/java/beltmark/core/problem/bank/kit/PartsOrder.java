package beltmark.core.problem.bank.kit;

import beltmark.core.problem.OrderBlank;
import beltmark.core.setup.Orientation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * In what order the parts of a tensioner follow each other, downwards from its datum edge. Common practice, no published
 * source. Overslung the spring stands on the base and presses the nuts, and with them rod and pole, up. Underslung it
 * stands on the nuts at the lower end of the rod and presses the pole's bushing up.
 */
final class PartsOrder {

    private static final String LOCK_NUT = "turning-lock-nut";
    private static final String NUT = "turning-adjusting-nut";
    private static final String WASHER = "turning-washer";
    private static final String SPRING = "turning-spring";
    private static final String BASE = "turning-base";
    private static final String POLE = "turning-pole";

    private PartsOrder() {}

    /** {@return the parts by option id, downwards from the datum edge} */
    static List<String> of(Orientation orientation) {
        return orientation == Orientation.OVERSLUNG
                ? List.of(LOCK_NUT, NUT, WASHER, SPRING, BASE, POLE)
                : List.of(BASE, POLE, SPRING, WASHER, NUT, LOCK_NUT);
    }

    static OrderBlank blank(String id, List<String> shown, Orientation orientation) {
        List<String> right = of(orientation);
        List<String> upwards = new ArrayList<>(right);
        Collections.reverse(upwards);
        Map<String, List<String>> slips = new LinkedHashMap<>();
        slips.put("other-orientation", of(orientation.turnedOver()));
        slips.put("upwards", upwards);
        slips.put("washer-at-wrong-end", swapped(right, WASHER, SPRING));
        slips.put("lock-nut-under", swapped(right, LOCK_NUT, NUT));
        slips.put("pole-on-wrong-side", swapped(right, BASE, POLE));
        slips.put("washer-between-nuts", swapped(right, WASHER, NUT));
        return new OrderBlank(id, shown, right, slips, Map.of());
    }

    private static List<String> swapped(List<String> order, String one, String other) {
        List<String> swapped = new ArrayList<>(order);
        Collections.swap(swapped, order.indexOf(one), order.indexOf(other));
        return swapped;
    }
}
