package beltmark.core.lockout;

/** How well a fact is known, the best first. */
public enum Mark {
    /** The paragraph itself was read. */
    SAW("SAW"),
    /** A government text that copies the rule was read; the number of the paragraph is from memory. */
    PARALLEL("PARALLEL"),
    /** Reasoned from paragraphs that were read; no text says it in these words, so it is good practice at most. */
    INFERENCE("INFERENCE"),
    /** Somebody else restates or quotes the paragraph. */
    SECONDARY("SECONDARY"),
    /** Recalled and not seen. */
    MEMORY("MEMORY");

    private final String id;

    Mark(String id) {
        this.id = id;
    }

    /** {@return the mark in content files and records} */
    public String id() {
        return id;
    }

    /** {@return whether a question on it is kept back until the site's coordinator has confirmed the source} */
    public boolean needsConfirmation() {
        return this == SECONDARY || this == MEMORY;
    }
}
