package beltmark.core.setup;

import beltmark.core.units.Word;

/**
 * Which way round a tensioner is mounted. Common practice, no published source: it is delivered for overslung mounting
 * and turned over only when something is in the way.
 */
public enum Orientation {
    /** The spring stands above its mounting plate and draws the pole up; the datum edge is the top of the tensioner. */
    OVERSLUNG,
    /** The spring hangs below its mounting plate and pushes the pole up; the datum edge is the mounting base. */
    UNDERSLUNG;

    /** {@return the lower-case name used in content files, forms and text keys} */
    public String id() {
        return this == OVERSLUNG ? "overslung" : "underslung";
    }

    /** {@return this orientation as a word of a worked step} */
    public Word word() {
        return new Word("setup.orientation." + id());
    }

    /** {@return the other way round} */
    public Orientation turnedOver() {
        return this == OVERSLUNG ? UNDERSLUNG : OVERSLUNG;
    }
}
