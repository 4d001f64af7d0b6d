package beltmark.core.setup;

import beltmark.core.units.Word;

/** What the blade tip is made of; it decides the mount offsets and the spring length. */
public enum Tip {
    /** Tungsten carbide on a steel blade. */
    CARBIDE("carbide"),
    /** Moulded polyurethane. */
    POLYURETHANE("polyurethane");

    private final String id;

    Tip(String id) {
        this.id = id;
    }

    /** {@return the lower-case name used in content files, forms and text keys} */
    public String id() {
        return id;
    }

    /** {@return this tip as a word of a worked step} */
    public Word word() {
        return new Word("setup.tip." + id);
    }

    /** {@return the other material} */
    public Tip other() {
        return this == CARBIDE ? POLYURETHANE : CARBIDE;
    }
}
