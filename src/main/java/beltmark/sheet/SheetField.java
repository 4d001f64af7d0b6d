package beltmark.sheet;

import beltmark.core.units.LengthSpan;
import java.util.Locale;
import java.util.stream.Stream;

/** The fields of the form, in the order in which they are asked and stand in an address. */
public enum SheetField {
    /** Where it is, in the crew's own words. */
    PLACE(Kind.TEXT, ""),
    /** The hardware card. */
    CARD(Kind.CHOICE, ""),
    /** The tip. */
    TIP(Kind.CHOICE, ""),
    /** The length of the blade. */
    BLADE(200, 3000, ""),
    /** The left belt mark. */
    LEFT(100, 5000, ""),
    /** The right belt mark. */
    RIGHT(100, 5000, ""),
    /** The slope of the return belt. */
    SLOPE(Kind.DEGREES, "0"),
    /** Free space above the belt mark. */
    ABOVE(10, 3000, ""),
    /** Free space below the belt mark. */
    BELOW(10, 3000, ""),
    /** Where something is in the way, if anything is. */
    OBSTACLE(Kind.CHOICE, "none"),
    /** From the belt mark to its near edge. */
    NEAR(0, 3000, ""),
    /** From the belt mark to its far edge. */
    FAR(0, 3000, ""),
    /** The width of the belt. */
    BELT(300, 4000, ""),
    /** The inside width of the structure. */
    INSIDE(300, 4000, ""),
    /** The outside width of the structure. */
    OUTSIDE(300, 4000, ""),
    /** How far the belt wanders to either side. */
    WANDER(0, 300, "0"),
    /** The height of the tallest splice. */
    SPLICE(0, 60, ""),
    /** The speed of the belt. */
    SPEED(Kind.SPEED, ""),
    /** How far off its mark the tensioner was fixed. */
    OFF(0, 100, "0"),
    /** Which way it is off. */
    WAY(Kind.CHOICE, "high");

    private final Kind kind;
    private final int fromMillimetres;
    private final int toMillimetres;
    private final String standard;

    SheetField(Kind kind, String standard) {
        this(kind, 0, 0, standard);
    }

    SheetField(int fromMillimetres, int toMillimetres, String standard) {
        this(Kind.LENGTH, fromMillimetres, toMillimetres, standard);
    }

    SheetField(Kind kind, int fromMillimetres, int toMillimetres, String standard) {
        this.kind = kind;
        this.fromMillimetres = fromMillimetres;
        this.toMillimetres = toMillimetres;
        this.standard = standard;
    }

    /** How a field is read. */
    enum Kind {
        TEXT,
        CHOICE,
        LENGTH,
        DEGREES,
        SPEED
    }

    /** {@return the name in forms, addresses, records and text keys} */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return the field of a name} */
    static Stream<SheetField> named(String id) {
        return Stream.of(values()).filter(field -> field.id().equals(id));
    }

    Kind kind() {
        return kind;
    }

    /** {@return what a length can be at any conveyor, so wide that only a wrong unit or an accident lies outside; own choice} */
    LengthSpan plausible() {
        return LengthSpan.ofMillimetres(fromMillimetres, toMillimetres);
    }

    /** {@return what stands in a fresh form, and counts when the field is left empty} */
    String standard() {
        return standard;
    }
}
