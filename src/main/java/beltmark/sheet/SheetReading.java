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
    /** No structure is that much out of level; beyond it one of the two was misread. */
    private static final Length MOST_OUT_OF_LEVEL = Length.ofMillimetres(300);

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
                beltMarks(),
                surroundings(),
                low ? off.negated() : off,
                length(SheetField.SPLICE));
        Length inside = length(SheetField.INSIDE);
        return new Installation(
                situation, slope(), belt(inside), inside, outside(inside), length(SheetField.WANDER), speed());
    }

    private Sides beltMarks() {
        Sides marks = new Sides(length(SheetField.LEFT), length(SheetField.RIGHT));
        boolean read = areRead(SheetField.LEFT, SheetField.RIGHT);
        if (read && !marks.left().isWithin(MOST_OUT_OF_LEVEL, marks.right())) {
            Length apart = marks.left().minus(marks.right()).abs();
            fault(SheetField.RIGHT, "sheet.fault.out-of-level", Map.of("apart", apart, "most", MOST_OUT_OF_LEVEL));
        }
        return marks;
    }

    private Length belt(Length inside) {
        Length belt = length(SheetField.BELT);
        if (areRead(SheetField.BELT, SheetField.INSIDE) && belt.compareTo(inside) > 0) {
            fault(SheetField.BELT, "sheet.fault.belt");
        }
        return belt;
    }

    private Length outside(Length inside) {
        Length outside = length(SheetField.OUTSIDE);
        if (areRead(SheetField.OUTSIDE, SheetField.INSIDE) && outside.compareTo(inside) < 0) {
            fault(SheetField.OUTSIDE, "sheet.fault.outside");
        }
        return outside;
    }

    private boolean areRead(SheetField one, SheetField other) {
        return !faults.containsKey(one) && !faults.containsKey(other);
    }

    private Surroundings surroundings() {
        Length above = length(SheetField.ABOVE);
        Length below = length(SheetField.BELOW);
        String where = choice(SheetField.OBSTACLE, List.of("none", "above", "below"), place -> place);
        if (where.equals("none")) {
            refuseStrayEdges();
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

    /** A distance to something in the way must not be dropped only because nobody picked where it is. */
    private void refuseStrayEdges() {
        Stream.of(SheetField.NEAR, SheetField.FAR)
                .filter(edge -> !form.text(edge).isEmpty())
                .forEach(edge -> {
                    fault(SheetField.OBSTACLE, "sheet.fault.obstacle");
                    length(edge);
                });
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
        words.fault(reading, field.plausible()).ifPresent(fault -> faults.putIfAbsent(field, fault));
        return reading.isReadable() ? reading.getLength() : Length.ZERO;
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
