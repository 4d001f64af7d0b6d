package beltmark.sheet;

import beltmark.core.problem.setup.SetupPart;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.CardTolerances;
import beltmark.core.setup.MountMarks;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Situation;
import beltmark.core.setup.SpringSetting;
import beltmark.core.sheet.Found;
import beltmark.core.sheet.SetupSheet;
import beltmark.core.solution.Step;
import beltmark.core.solution.Warning;
import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import beltmark.drawing.Drawing;
import beltmark.drawing.setup.SideElevation;
import beltmark.sheet.Sheets.Opened;
import beltmark.texts.Words;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Makes the page of a set-up sheet. */
final class SheetPages {

    private final View view;
    private final Words words;
    private final SheetForm form;
    private final SetupSheet sheet;
    private final Situation situation;

    SheetPages(View view, SheetForm form, SetupSheet sheet) {
        this.view = view;
        this.words = view.words();
        this.form = form;
        this.sheet = sheet;
        this.situation = sheet.installation().situation();
    }

    /** {@return the page, of a kept sheet or of one that is not kept} */
    SheetPage page(@Nullable Opened opened) {
        boolean maySign = opened != null && view.has(Role.SUPERVISOR);
        return new SheetPage(
                view,
                form,
                heading(),
                sheet.refusals().stream().map(this::sentence).toList(),
                warnings(opened),
                rows(),
                new SheetGroups(words, sheet).groups(),
                drawings(),
                sheet.steps().stream().map(this::sentence).toList(),
                OperationId.fresh(),
                opened == null ? null : opened.line(),
                maySign && isOnChart() ? signOff() : null,
                maySign && !isOnChart() ? noSignOff() : null);
    }

    private boolean isOnChart() {
        return SpringSetting.fromChart(situation.card(), situation.tip(), situation.blade())
                .isPresent();
    }

    private String noSignOff() {
        return view.text("sheet.no-sign-off", "blade", unbroken(words.length(situation.blade())));
    }

    /** The form of a sign-off asks for the same things by these names; what was left at the end is measured there. */
    private String signOff() {
        Map<String, String> carried = new LinkedHashMap<>();
        carried.put("card", situation.card().id());
        carried.put("tip", situation.tip().id());
        carried.put("blade", Long.toString(situation.blade().nanometres()));
        carried.put(
                "orientation",
                sheet.mounting().way().result().map(Orientation::id).orElse(""));
        carried.put("conveyor", form.text(SheetField.PLACE));
        carried.put("belt-mark-left", form.text(SheetField.LEFT));
        carried.put("belt-mark-right", form.text(SheetField.RIGHT));
        return "/sign-off?"
                + carried.entrySet().stream()
                        .map(field ->
                                field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"));
    }

    private String heading() {
        return view.text(
                "sheet.heading",
                "card",
                view.text("hardware.name." + situation.card().id()),
                "tip",
                situation.tip().word(),
                "blade",
                unbroken(words.length(situation.blade())),
                "other",
                unbroken(other(Optional.of(situation.blade()))));
    }

    /** A mixed number that is parted at the end of a line is misread. */
    private static String unbroken(String length) {
        return length.replace(' ', '\u00a0');
    }

    private List<String> warnings(@Nullable Opened opened) {
        List<String> warnings = new ArrayList<>();
        if (opened != null && opened.record().cardVersion() != situation.card().version()) {
            warnings.add(words.say("sheet.card-changed"));
        }
        sheet.warnings().stream().map(Warning::key).map(words::say).forEach(warnings::add);
        return warnings;
    }

    private String sentence(Refused refused) {
        return words.say(refused.refusal().key(), refused.values());
    }

    private String sentence(Step step) {
        return words.step(step);
    }

    private List<Row> rows() {
        CardTolerances tolerances = situation.card().tolerances();
        List<Row> rows = new ArrayList<>();
        rows.add(row("belt-mark", Optional.of(situation.beltMarks()), ""));
        Optional<Sides> marks = sheet.mounting().marks().result().map(MountMarks::heights);
        rows.add(row("mount-mark", marks, words.length(tolerances.mark())));
        if (sheet.installation().slope().degrees() > 0) {
            rows.add(row("mount-mark-plumb", sheet.mounting().plumbMarks().result(), words.length(tolerances.mark())));
        }
        Optional<Sides> springs = sheet.springs().setting().result().map(set -> Sides.both(set.measured()));
        rows.add(row("spring", springs, words.length(tolerances.spring())));
        Found<Length> sleeve = sheet.passing().sleeveAtRest();
        rows.add(row("sleeve", sleeve.result().map(Sides::both), words.length(tolerances.sleeve())));
        return rows;
    }

    private Row row(String id, Optional<Sides> sides, String tolerance) {
        return new Row(
                words.say("sheet.row." + id),
                own(sides.map(Sides::left)),
                other(sides.map(Sides::left)),
                own(sides.map(Sides::right)),
                other(sides.map(Sides::right)),
                tolerance);
    }

    private String own(Optional<Length> length) {
        return length.map(words::length).orElse(words.say("sheet.none"));
    }

    private String other(Optional<Length> length) {
        Graduation other =
                words.graduation().unit() == LengthUnit.INCH ? Graduation.MILLIMETRE : Graduation.SIXTEENTH_INCH;
        return length.map(known -> LengthPrinter.print(known, other)).orElse("");
    }

    /** With a way round the tensioners as mounted and the sleeve; without one, why neither way fits. */
    private List<Drawing> drawings() {
        SideElevation elevation = new SideElevation(situation, EnumSet.allOf(SetupPart.class));
        boolean hasSleeve = sheet.passing().sleeveOverSplice().result().isPresent();
        return sheet.mounting()
                .way()
                .result()
                .map(way -> hasSleeve
                        ? List.of(elevation.mountMarks(way, words), elevation.sleeve(words))
                        : List.of(elevation.mountMarks(way, words)))
                .orElseGet(() -> List.of(elevation.orientation(words)));
    }
}
