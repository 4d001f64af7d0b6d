package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.core.setup.Measure;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.TipCard;
import beltmark.signoff.EntryForm.Choice;
import beltmark.signoff.EntryForm.Field;
import beltmark.signoff.EntryForm.Observation;
import beltmark.signoff.EntryForm.Pair;
import beltmark.web.Option;
import beltmark.web.View;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes the form of one sign-off for a page. */
final class EntryForms {

    private final View view;
    private final DemonstrationForm form;
    private final Map<String, String> faults;

    /**
     * @param view what all pages share
     * @param form what was typed
     * @param faults what is wrong, worded, by field
     */
    EntryForms(View view, DemonstrationForm form, Map<String, String> faults) {
        this.view = view;
        this.form = form;
        this.faults = faults;
    }

    EntryForm entry(UnderWay underWay) {
        return new EntryForm(
                underWay.path(),
                underWay.operation(),
                new Choice(field(DemonstrationForm.BLADE), blades(underWay.rig())),
                new Choice(field(DemonstrationForm.ORIENTATION), orientations()),
                new Choice(field(DemonstrationForm.ON), days(underWay.today())),
                field(DemonstrationForm.CONVEYOR),
                view.demo() ? List.of(view.text("signoff.conveyor-suggestions").split(" ", -1)) : List.of(),
                Stream.of(Measure.values()).map(this::pair).toList(),
                observations(underWay.checklist()));
    }

    private Field field(String name) {
        return new Field(name, form.value(name), error(name));
    }

    private @Nullable String error(String name) {
        return faults.get(name);
    }

    private List<Option> blades(Rig rig) {
        return rig.card().tip(rig.tip()).chart().stream()
                .map(TipCard.Setting::blade)
                .map(blade -> new Option(DemonstrationReading.bladeValue(blade), view.length(blade)))
                .toList();
    }

    private List<Option> orientations() {
        return Stream.of(Orientation.values())
                .map(way -> new Option(way.id(), view.text("signoff.orientation." + way.id())))
                .toList();
    }

    private List<Option> days(LocalDate today) {
        return Signoff.daysUpTo(today).stream()
                .map(day -> new Option(day.toString(), view.words().day(day)))
                .toList();
    }

    private Pair pair(Measure measure) {
        return new Pair(
                measure.id(),
                field(DemonstrationForm.name(measure, Side.LEFT)),
                field(DemonstrationForm.name(measure, Side.RIGHT)));
    }

    private List<Observation> observations(Checklist checklist) {
        return checklist.observations().stream()
                .map(seen -> new Observation(seen, form.observed().contains(seen), error(seen)))
                .toList();
    }
}
