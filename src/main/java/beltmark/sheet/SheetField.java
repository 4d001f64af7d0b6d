package beltmark.sheet;

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
    BLADE(Kind.SIZE, ""),
    /** The left belt mark. */
    LEFT(Kind.LENGTH, ""),
    /** The right belt mark. */
    RIGHT(Kind.LENGTH, ""),
    /** The slope of the return belt. */
    SLOPE(Kind.DEGREES, "0"),
    /** Free space above the belt mark. */
    ABOVE(Kind.SIZE, ""),
    /** Free space below the belt mark. */
    BELOW(Kind.SIZE, ""),
    /** Where something is in the way, if anything is. */
    OBSTACLE(Kind.CHOICE, "none"),
    /** From the belt mark to its near edge. */
    NEAR(Kind.OBSTACLE_EDGE, ""),
    /** From the belt mark to its far edge. */
    FAR(Kind.OBSTACLE_EDGE, ""),
    /** The width of the belt. */
    BELT(Kind.SIZE, ""),
    /** The inside width of the structure. */
    INSIDE(Kind.SIZE, ""),
    /** The outside width of the structure. */
    OUTSIDE(Kind.SIZE, ""),
    /** How far the belt wanders to either side. */
    WANDER(Kind.LENGTH, "0"),
    /** The height of the tallest splice. */
    SPLICE(Kind.LENGTH, ""),
    /** The speed of the belt. */
    SPEED(Kind.SPEED, ""),
    /** How far off its mark the tensioner was fixed. */
    OFF(Kind.LENGTH, "0"),
    /** Which way it is off. */
    WAY(Kind.CHOICE, "high");

    private final Kind kind;
    private final String standard;

    SheetField(Kind kind, String standard) {
        this.kind = kind;
        this.standard = standard;
    }

    /** How a field is read. */
    enum Kind {
        TEXT,
        CHOICE,
        LENGTH,
        /** A length above nought. */
        SIZE,
        /** A length that is only asked when something is in the way. */
        OBSTACLE_EDGE,
        DEGREES,
        SPEED;

        boolean isLength() {
            return this == LENGTH || this == SIZE || this == OBSTACLE_EDGE;
        }
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

    /** {@return what stands in a fresh form, and counts when the field is left empty} */
    String standard() {
        return standard;
    }
}
