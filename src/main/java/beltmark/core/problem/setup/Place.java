package beltmark.core.problem.setup;

import beltmark.core.setup.Orientation;
import beltmark.core.setup.OrientationChoice;
import java.util.List;
import java.util.Optional;

/** The kinds of place a cleaner may have to be fitted at, by what the clearances allow. */
public enum Place {
    /** The tensioner fits overslung. */
    AS_DELIVERED,
    /** Something is in the way of overslung; underslung fits. */
    TURNED_OVER,
    /** Neither way fits. */
    NOTHING_FITS;

    static final List<Place> ALL = List.of(values());

    static Place of(OrientationChoice choice) {
        Optional<Orientation> chosen = choice.chosen();
        if (chosen.isEmpty()) {
            return NOTHING_FITS;
        }
        return chosen.get() == Orientation.OVERSLUNG ? AS_DELIVERED : TURNED_OVER;
    }
}
