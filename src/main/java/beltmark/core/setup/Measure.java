package beltmark.core.setup;

import beltmark.core.units.LengthSpan;

/** What is measured on each side after a set-up, in the order of the job. */
public enum Measure {
    /** The height of the belt mark; what it should be is nowhere written, the mount mark hangs from it. */
    BELT_MARK("belt-mark", 100, 5000),
    /** The height of the tensioner's datum edge. */
    MOUNT_MARK("mount-mark", 100, 5000),
    /** The spring length. */
    SPRING("spring", 20, 400),
    /** The sleeve showing below the bushing. */
    SLEEVE("sleeve", 0, 200);

    private final String id;
    private final int fromMillimetres;
    private final int toMillimetres;

    Measure(String id, int fromMillimetres, int toMillimetres) {
        this.id = id;
        this.fromMillimetres = fromMillimetres;
        this.toMillimetres = toMillimetres;
    }

    /** {@return the hyphenated name used in forms, records and text keys} */
    public String id() {
        return id;
    }

    /** {@return what it can be at any conveyor; wide, so that only a wrong unit or an accident lies outside; own choice} */
    public LengthSpan plausible() {
        return LengthSpan.ofMillimetres(fromMillimetres, toMillimetres);
    }
}
