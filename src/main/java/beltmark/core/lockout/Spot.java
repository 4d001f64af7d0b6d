package beltmark.core.lockout;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A place on the drawn conveyor that can be tapped. What each of them holds or does is the checklist of stored energy on
 * a belt conveyor: reasoned from 29 CFR 1910.147(d)(3), (d)(5) and Appendix A; no text gives the list as such.
 */
public enum Spot {
    /** The motor on the head pulley. */
    HEAD_DRIVE("head-drive"),
    /** The disconnect switch of the head drive. */
    HEAD_DISCONNECT("head-disconnect"),
    /** A second motor at the tail pulley. */
    TAIL_DRIVE("tail-drive"),
    /** The disconnect switch of the tail drive. */
    TAIL_DISCONNECT("tail-disconnect"),
    /** The capacitors inside the variable-frequency drive. */
    CAPACITORS("capacitors"),
    /** The hanging weight that keeps the belt tight. */
    TAKE_UP_WEIGHT("take-up-weight"),
    /** The pin that holds the weight on its guide. */
    TAKE_UP_PIN("take-up-pin"),
    /** The vessel with compressed air. */
    AIR_RECEIVER("air-receiver"),
    /** The valve in the air line, with its bleed. */
    AIR_VALVE("air-valve"),
    /** The compressed springs of the belt cleaner. */
    CLEANER_SPRINGS("cleaner-springs"),
    /** The start and stop push buttons beside the belt. */
    PUSH_BUTTONS("push-buttons"),
    /** The pull cord along the belt. */
    PULL_CORD("pull-cord"),
    /** The local/remote selector switch. */
    SELECTOR("selector"),
    /** The material that lies on the rising belt. */
    LOAD("load"),
    /** The horn that warns before the start. */
    HORN("horn"),
    /** The clamp that holds the belt to the steel. */
    BELT_CLAMP("belt-clamp");

    private final String id;

    Spot(String id) {
        this.id = id;
    }

    /** {@return the id of the spot as an option of a question} */
    public String id() {
        return id;
    }

    /** {@return the spot of an id} */
    public static Optional<Spot> find(String id) {
        return Arrays.stream(values()).filter(spot -> spot.id.equals(id)).findFirst();
    }

    /** {@return the ids of all spots} */
    public static List<String> ids() {
        return Arrays.stream(values()).map(Spot::id).toList();
    }
}
