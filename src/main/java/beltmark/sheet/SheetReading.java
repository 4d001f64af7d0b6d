package beltmark.sheet;

import beltmark.content.Content;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Sides;
import beltmark.core.setup.Situation;
import beltmark.core.setup.Surroundings;
import beltmark.core.setup.Tip;
import beltmark.core.sheet.Installation;
import beltmark.core.units.Angle;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthReading;
import beltmark.core.units.Speed;
import beltmark.texts.Words;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads a form into an installation; every field that cannot be read gets a sentence of its own. */
final class SheetReading {

    private static final int LONGEST_PLACE = 60;
    private static final double STEEPEST_DEGREES = 45;
    private static final double FASTEST_METRES_PER_SECOND = 15;
    /** No structure that a cleaner is fitted to is wider or higher; beyond it a unit was mixed up. */
    private static final Length LARGEST = Length.ofMillimetres(20_000);

    private final SheetForm form;
    private final Words words;
    private final Map<SheetField, String> faults = new EnumMap<>(SheetField.class);

    private SheetReading(SheetForm form, Words words) {
        this.form = form;
        this.words = words;
    }

    /**
     * What was read.
     *
     * @param installation empty when a field could not be read
     * @param faults why not, by field, worded
     */
    record Read(Optional<Installation> installation, Map<SheetField, String> faults) {}

    static Read of(SheetForm form, Content content, Words words) {
        SheetReading reading = new SheetReading(form, words);
        Optional<HardwareCard> card = content.findCard(form.text(SheetField.CARD));
        if (card.isEmpty()) {
            reading.fault(SheetField.CARD, "sheet.fault.pick");
        }
        Installation installation =
                reading.installation(card.orElse(content.cards().get(0)));
        return new Read(
                reading.faults.isEmpty() ? Optional.of(installation) : Optional.empty(), Map.copyOf(reading.faults));
    }

    private Installation installation(HardwareCard card) {
        if (form.text(SheetField.PLACE).length() > LONGEST_PLACE) {
            fault(SheetField.PLACE, "sheet.fault.place", Map.of("most", LONGEST_PLACE));
        }
        Tip tip = choice(SheetField.TIP, List.of(Tip.values()), Tip::id);
        Length off = length(SheetField.OFF);
        boolean low = choice(SheetField.WAY, List.of("high", "low"), way -> way).equals("low");
        Situation situation = new Situation(
                card,
                tip,
                card.tip(tip).chartBlade(length(SheetField.BLADE)),
                new Sides(length(SheetField.LEFT), length(SheetField.RIGHT)),
                surroundings(),
                low ? off.negated() : off,
                length(SheetField.SPLICE));
        return new Installation(
                situation,
                slope(),
                length(SheetField.BELT),
                length(SheetField.INSIDE),
                length(SheetField.OUTSIDE),
                length(SheetField.WANDER),
                speed());
    }

    private Surroundings surroundings() {
        Length above = length(SheetField.ABOVE);
        Length below = length(SheetField.BELOW);
        String where = choice(SheetField.OBSTACLE, List.of("none", "above", "below"), place -> place);
        if (where.equals("none")) {
            return new Surroundings(below.negated(), above, List.of());
        }
        Length near = length(SheetField.NEAR);
        Length far = length(SheetField.FAR);
        if (far.compareTo(near) < 0) {
            fault(SheetField.FAR, "sheet.fault.far");
            far = near;
        }
        Reach obstacle = where.equals("above") ? new Reach(near, far) : new Reach(far.negated(), near.negated());
        return new Surroundings(below.negated(), above, List.of(obstacle));
    }

    private <T> T choice(SheetField field, List<T> options, Function<T, String> id) {
        Stream<T> fitting = options.stream().filter(option -> id.apply(option).equals(form.text(field)));
        return fitting.findFirst().orElseGet(() -> {
            fault(field, "sheet.fault.pick");
            return options.get(0);
        });
    }

    /** {@return the length typed; nought, with a fault, when it could not be read} */
    private Length length(SheetField field) {
        LengthReading reading =
                LengthReader.read(form.text(field), words.graduation().unit());
        if (!reading.isReadable()) {
            faults.putIfAbsent(field, words.reading(reading));
            return Length.ZERO;
        }
        Length length = reading.getLength();
        boolean tooSmall = field.kind() == SheetField.Kind.SIZE && length.equals(Length.ZERO);
        if (tooSmall || length.compareTo(LARGEST) > 0) {
            fault(field, tooSmall ? "sheet.fault.nought" : "sheet.fault.too-large", Map.of("largest", LARGEST));
        }
        return length;
    }

    private Angle slope() {
        String text = form.text(SheetField.SLOPE).replace("°", "").strip().replace(',', '.');
        boolean readable = text.matches("\\d{1,2}(\\.\\d{1,3})?");
        double degrees = readable ? Double.parseDouble(text) : 0;
        if (!readable || degrees > STEEPEST_DEGREES) {
            fault(SheetField.SLOPE, "sheet.fault.slope", Map.of("most", STEEPEST_DEGREES));
        }
        return Angle.ofDegrees(degrees);
    }

    private Speed speed() {
        Speed fastest = Speed.ofMetresPerSecond(FASTEST_METRES_PER_SECOND);
        Optional<Speed> speed = SpeedReader.read(
                        form.text(SheetField.SPEED), words.graduation().unit())
                .filter(read -> read.metresPerSecond() > 0 && read.metresPerSecond() <= FASTEST_METRES_PER_SECOND);
        if (speed.isEmpty()) {
            fault(SheetField.SPEED, "sheet.fault.speed", Map.of("most", fastest));
        }
        return speed.orElse(fastest);
    }

    private void fault(SheetField field, String key) {
        fault(field, key, Map.of());
    }

    private void fault(SheetField field, String key, Map<String, ?> values) {
        faults.putIfAbsent(field, words.say(key, values));
    }
}
