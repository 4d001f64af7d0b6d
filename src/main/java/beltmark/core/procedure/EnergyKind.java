package beltmark.core.procedure;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of energy named by the definition of an energy source, 29 CFR 1910.147(b), with what a conveyor stores. */
public enum EnergyKind {
    /** A supply, or the charge of a capacitor. */
    ELECTRICAL("electrical"),
    /** A lifted weight or load. */
    GRAVITY("gravity"),
    /** A loaded spring or a stretched belt. */
    SPRING("spring"),
    /** Anything else that moves or is about to. */
    MECHANICAL("mechanical"),
    /** Liquid under pressure. */
    HYDRAULIC("hydraulic"),
    /** Air or gas under pressure. */
    PNEUMATIC("pneumatic"),
    /** Heat or cold. */
    THERMAL("thermal"),
    /** A substance that reacts. */
    CHEMICAL("chemical");

    private final String id;

    EnergyKind(String id) {
        this.id = id;
    }

    /** {@return the name in records, forms and text keys} */
    public String id() {
        return id;
    }

    /** {@return the kind of an id} */
    public static Optional<EnergyKind> find(String id) {
        return Arrays.stream(values()).filter(kind -> kind.id.equals(id)).findFirst();
    }
}
