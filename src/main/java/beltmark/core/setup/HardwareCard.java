package beltmark.core.setup;

import beltmark.core.spring.CompressionSpring;
import beltmark.core.units.Length;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What one cleaner needs to be set up: read from a hardware card file, checked there, never changed afterwards.
 *
 * @param id the card's hyphenated name
 * @param version counts up with every change of a number on the card
 * @param tips what depends on the tip
 * @param reaches the space a tensioner takes up about its own datum edge, per orientation
 * @param clearance the least gap to keep to anything around it
 * @param spring the spring on each side
 * @param washer the thickness of the washer on each spring
 * @param sleeve how much sleeve shows below the bushing when the pole is set, so that the cleaner can drop for a splice
 * @param tolerances how far an as-left measure may be off
 * @param blade the blade and what moves with it
 * @param pole the pole and its brackets
 */
public record HardwareCard(
        String id,
        int version,
        Map<Tip, TipCard> tips,
        Map<Orientation, Reach> reaches,
        Length clearance,
        CompressionSpring spring,
        Length washer,
        Length sleeve,
        CardTolerances tolerances,
        BladeCard blade,
        PoleCard pole) {

    public HardwareCard {
        tips = Map.copyOf(tips);
        reaches = Map.copyOf(reaches);
    }

    /** {@return what the card says for a tip} */
    public TipCard tip(Tip tip) {
        return require(tips.get(tip), tip.id());
    }

    /** {@return how far above the belt mark the tensioner's datum edge goes} */
    public Length mountOffset(Tip tip, Orientation orientation) {
        return tip(tip).offset(orientation);
    }

    /** {@return the space the tensioner takes up about its own datum edge} */
    public Reach reach(Orientation orientation) {
        return require(reaches.get(orientation), orientation.id());
    }

    /** {@return the space the tensioner takes up, from the belt mark} */
    public Reach reachFromBeltMark(Tip tip, Orientation orientation) {
        return reach(orientation).movedUp(mountOffset(tip, orientation));
    }

    private <T> T require(@Nullable T value, String what) {
        if (value == null) {
            throw new IllegalArgumentException("card " + id + " has nothing for " + what);
        }
        return value;
    }
}
