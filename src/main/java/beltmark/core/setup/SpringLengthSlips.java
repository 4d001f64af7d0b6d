package beltmark.core.setup;

import beltmark.core.solution.Slip;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;

/** The known wrong ways to come by a spring length, in a problem and at a conveyor. */
public final class SpringLengthSlips {

    private SpringLengthSlips() {}

    /**
     * Finds the spring length in every known wrong way.
     *
     * @param card the hardware
     * @param setting the right one, from the card's chart
     * @return the slips, each with another value than the right one's and the others'
     */
    public static List<Slip> of(HardwareCard card, SpringSetting setting) {
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip("washer-left-out", setting.coil()));
        slips.add(new Slip("washer-added", setting.springLength().plus(setting.washer())));
        slips.add(new Slip("free-length", card.spring().freeLength()));
        TipCard otherTip = card.tip(setting.tip().other());
        otherTip.springLength(setting.blade()).ifPresent(length -> addIfNew(slips, setting, "other-tip", length));
        List<TipCard.Setting> chart = card.tip(setting.tip()).chart();
        for (int i = 0; i < chart.size(); i++) {
            if (chart.get(i).blade().equals(setting.blade())) {
                neighbour(chart, i - 1).forEach(row -> addIfNew(slips, setting, "row-above", row));
                neighbour(chart, i + 1).forEach(row -> addIfNew(slips, setting, "row-below", row));
            }
        }
        return slips;
    }

    private static List<Length> neighbour(List<TipCard.Setting> chart, int index) {
        return index < 0 || index >= chart.size()
                ? List.of()
                : List.of(chart.get(index).springLength());
    }

    /** Neighbouring rows of a chart may hold the same length; then taking the wrong one is no slip that shows. */
    private static void addIfNew(List<Slip> slips, SpringSetting setting, String id, Length value) {
        boolean shows = !value.equals(setting.springLength())
                && slips.stream().noneMatch(slip -> slip.value().equals(value));
        if (shows) {
            slips.add(new Slip(id, value));
        }
    }
}
