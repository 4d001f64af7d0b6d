package beltmark.core.setup;

/** A side of the conveyor, seen looking along the belt travel. */
public enum Side {
    /** The left side. */
    LEFT("left"),
    /** The right side. */
    RIGHT("right");

    private final String id;

    Side(String id) {
        this.id = id;
    }

    /** {@return the lower-case name used in forms and text keys} */
    public String id() {
        return id;
    }

    /** {@return the opposite side} */
    public Side opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }
}
