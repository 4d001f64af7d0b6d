package beltmark.core.setup;

/** What is measured on each side after a set-up, in the order of the job. */
public enum Measure {
    /** The height of the belt mark; what it should be is nowhere written, the mount mark hangs from it. */
    BELT_MARK("belt-mark"),
    /** The height of the tensioner's datum edge. */
    MOUNT_MARK("mount-mark"),
    /** The spring length. */
    SPRING("spring"),
    /** The sleeve showing below the bushing. */
    SLEEVE("sleeve");

    private final String id;

    Measure(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name used in forms, records and text keys} */
    public String id() {
        return id;
    }
}
