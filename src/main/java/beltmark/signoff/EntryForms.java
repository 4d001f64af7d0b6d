package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.core.finish.BounceResult;
import beltmark.core.setup.Measure;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.TipCard;
import beltmark.signoff.EntryForm.Choice;
import beltmark.signoff.EntryForm.Explanation;
import beltmark.signoff.EntryForm.Field;
import beltmark.signoff.EntryForm.Finish;
import beltmark.signoff.EntryForm.Observation;
import beltmark.signoff.EntryForm.Pair;
import beltmark.signoff.EntryForm.Picked;
import beltmark.web.Option;
import beltmark.web.View;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

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

    /** {@return the form, in which what is beyond its tolerance can be explained} */
    EntryForm entry(UnderWay underWay, List<String> beyond) {
        return new EntryForm(
                underWay.path(),
                underWay.operation(),
                form.value(DemonstrationForm.ENTERED_AT),
                picked(underWay),
                field(DemonstrationForm.CONVEYOR),
                view.demo() ? List.of(view.text("signoff.conveyor-suggestions").split(" ", -1)) : List.of(),
                Stream.of(Measure.values()).map(this::pair).toList(),
                new Finish(
                        new Pair("edge", field(DemonstrationForm.EDGE_LEFT), field(DemonstrationForm.EDGE_RIGHT)),
                        field(DemonstrationForm.ANGLE),
                        field(DemonstrationForm.SPLICE)),
                observations(underWay.checklist()),
                explanations(beyond));
    }

    private Field field(String name) {
        return new Field(name, form.value(name), faults.get(name));
    }

    private Picked picked(UnderWay underWay) {
        return new Picked(
                new Choice(field(DemonstrationForm.BLADE), blades(underWay.rig())),
                new Choice(field(DemonstrationForm.ORIENTATION), orientations()),
                new Choice(field(DemonstrationForm.ON), days(underWay.today())),
                new Choice(field(DemonstrationForm.BOUNCE), bounces()),
                new Choice(
                        field(DemonstrationForm.TRAINED),
                        Stream.of("no", "yes")
                                .map(answer -> new Option(answer, view.text("signoff.trained." + answer)))
                                .toList()));
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

    private List<Option> bounces() {
        return Stream.of(BounceResult.values())
                .map(result -> new Option(result.id(), view.quantity(result.word())))
                .toList();
    }

    private Pair pair(Measure measure) {
        return new Pair(
                measure.id(),
                field(DemonstrationForm.name(measure, Side.LEFT)),
                field(DemonstrationForm.name(measure, Side.RIGHT)));
    }

    private List<Observation> observations(Checklist checklist) {
        List<Option> answers = Stream.of(Seen.values())
                .map(answer -> new Option(answer.id(), view.text("signoff.answer." + answer.id())))
                .toList();
        return checklist.observations().stream()
                .map(one -> new Observation(
                        one.id(), one.critical(), new Choice(field(DemonstrationForm.name(one)), answers)))
                .toList();
    }

    /** Asked for what is beyond now, and for what was explained before and has something wrong with it. */
    private List<Explanation> explanations(List<String> beyond) {
        return Findings.names().stream()
                .filter(name -> beyond.contains(name) || faults.containsKey(DemonstrationForm.explain(name)))
                .map(name ->
                        new Explanation(new SignoffWords(view).title(name), field(DemonstrationForm.explain(name))))
                .toList();
    }
}
