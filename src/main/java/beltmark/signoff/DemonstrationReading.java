package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.core.setup.AsLeft;
import beltmark.core.setup.Measure;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.Side;
import beltmark.core.setup.Sides;
import beltmark.core.setup.SpringSetting;
import beltmark.core.setup.TipCard;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.texts.Words;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads the sign-off form: what it says, or what is wrong with each field, in a sentence. */
final class DemonstrationReading {

    /** The longest name of a conveyor, in characters. */
    static final int LONGEST_CONVEYOR = 60;

    private static final String FAULT = "signoff.fault.";

    private final DemonstrationForm form;
    private final Words words;
    private final Map<String, String> faults = new LinkedHashMap<>();
    private final Optional<Demonstration> demonstration;

    private DemonstrationReading(DemonstrationForm form, Rig rig, Checklist checklist, Words words, LocalDate today) {
        this.form = form;
        this.words = words;
        Optional<SpringSetting> setting = setting(rig);
        Optional<Orientation> orientation = orientation();
        String conveyor = conveyor();
        Optional<LocalDate> on = on(today);
        Map<Measure, Sides> measures = measures();
        checklist.observations().stream()
                .filter(seen -> !form.observed().contains(seen))
                .forEach(seen -> fault(seen, "not-observed"));
        this.demonstration = faults.isEmpty()
                ? Optional.of(new Demonstration(
                        rig,
                        setting.orElseThrow(),
                        asLeft(orientation.orElseThrow(), measures),
                        conveyor,
                        on.orElseThrow(),
                        form.typed(),
                        checklist))
                : Optional.empty();
    }

    /**
     * Reads a form.
     *
     * @param form what was sent
     * @param rig the hardware
     * @param checklist what must have been seen
     * @param words the words of whoever typed it; a length without a unit is in theirs
     * @param today the day at the site
     * @return what it says
     */
    static DemonstrationReading of(DemonstrationForm form, Rig rig, Checklist checklist, Words words, LocalDate today) {
        return new DemonstrationReading(form, rig, checklist, words, today);
    }

    /** {@return the value of a blade option} */
    static String bladeValue(Length blade) {
        return Long.toString(blade.nanometres());
    }

    Optional<Demonstration> demonstration() {
        return demonstration;
    }

    /** {@return what is wrong, worded, by field or observation} */
    Map<String, String> faults() {
        return Map.copyOf(faults);
    }

    private Optional<SpringSetting> setting(Rig rig) {
        String typed = form.value(DemonstrationForm.BLADE);
        Optional<SpringSetting> setting = rig.card().tip(rig.tip()).chart().stream()
                .map(TipCard.Setting::blade)
                .filter(blade -> bladeValue(blade).equals(typed))
                .findFirst()
                .flatMap(blade -> SpringSetting.fromChart(rig.card(), rig.tip(), blade));
        return orFault(setting, DemonstrationForm.BLADE, "blade");
    }

    private Optional<Orientation> orientation() {
        Optional<Orientation> orientation = Stream.of(Orientation.values())
                .filter(known -> known.id().equals(form.value(DemonstrationForm.ORIENTATION)))
                .findFirst();
        return orFault(orientation, DemonstrationForm.ORIENTATION, "orientation");
    }

    private Optional<LocalDate> on(LocalDate today) {
        Optional<LocalDate> on = Signoff.daysUpTo(today).stream()
                .filter(day -> day.toString().equals(form.value(DemonstrationForm.ON)))
                .findFirst();
        return orFault(on, DemonstrationForm.ON, "day");
    }

    private <T> Optional<T> orFault(Optional<T> read, String field, String fault) {
        if (read.isEmpty()) {
            fault(field, fault);
        }
        return read;
    }

    private String conveyor() {
        String typed = form.value(DemonstrationForm.CONVEYOR);
        if (typed.isEmpty()) {
            fault(DemonstrationForm.CONVEYOR, "conveyor-blank");
        } else if (typed.codePointCount(0, typed.length()) > LONGEST_CONVEYOR || typed.contains("\n")) {
            fault(DemonstrationForm.CONVEYOR, "conveyor-long");
        }
        return typed;
    }

    private Map<Measure, Sides> measures() {
        Map<Measure, Sides> measures = new HashMap<>();
        for (Measure measure : Measure.values()) {
            measures.put(measure, new Sides(length(measure, Side.LEFT), length(measure, Side.RIGHT)));
        }
        return measures;
    }

    /** {@return the length typed, or a stand-in beside a fault} */
    private Length length(Measure measure, Side side) {
        String name = DemonstrationForm.name(measure, side);
        LengthReading reading =
                LengthReader.read(form.value(name), words.graduation().unit());
        words.fault(reading, measure.plausible()).ifPresent(fault -> faults.put(name, fault));
        return reading.isReadable() ? reading.getLength() : Length.ZERO;
    }

    private void fault(String field, String id) {
        faults.put(field, words.say(FAULT + id));
    }

    private static AsLeft asLeft(Orientation orientation, Map<Measure, Sides> measures) {
        return new AsLeft(
                orientation,
                get(measures, Measure.BELT_MARK),
                get(measures, Measure.MOUNT_MARK),
                get(measures, Measure.SPRING),
                get(measures, Measure.SLEEVE));
    }

    private static Sides get(Map<Measure, Sides> measures, Measure measure) {
        return measures.getOrDefault(measure, Sides.both(Length.ZERO));
    }
}
