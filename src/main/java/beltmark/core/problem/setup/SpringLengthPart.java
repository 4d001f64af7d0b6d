package beltmark.core.problem.setup;

import beltmark.core.problem.Carry;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Slip;
import beltmark.core.setup.Situation;
import beltmark.core.setup.SpringSetting;
import beltmark.core.setup.TipCard;
import beltmark.core.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Looking up the spring length for the blade and the tip. */
final class SpringLengthPart {

    private SpringLengthPart() {}

    static Part of(Situation situation, SituationRanges ranges) {
        SpringSetting setting = situation.springSetting();
        LengthBlank blank = new LengthBlank(
                "both",
                setting.springLength(),
                ranges.reading(),
                ranges.springAnswers(),
                slips(situation, setting),
                Carry.NONE);
        return new Part(SetupPart.SPRING_LENGTH.id(), List.of(), List.of(blank), setting.steps());
    }

    private static List<Slip> slips(Situation situation, SpringSetting setting) {
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip("washer-left-out", setting.coil()));
        slips.add(new Slip("washer-added", setting.springLength().plus(setting.washer())));
        slips.add(new Slip("free-length", situation.card().spring().freeLength()));
        TipCard otherTip = situation.card().tip(situation.tip().other());
        otherTip.springLength(situation.blade()).ifPresent(length -> addIfNew(slips, setting, "other-tip", length));
        List<TipCard.Setting> chart = situation.card().tip(situation.tip()).chart();
        for (int i = 0; i < chart.size(); i++) {
            if (chart.get(i).blade().equals(situation.blade())) {
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
