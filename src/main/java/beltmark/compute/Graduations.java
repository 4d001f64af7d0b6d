package beltmark.compute;

import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import java.util.stream.Stream;

/** The graduations of a tape by the words used in a line. */
final class Graduations {

    static final Field FIELD = Field.choice("graduation", Choices.ids(Graduation.values(), Graduations::id))
            .optional();

    private Graduations() {}

    /** The graduation given, or the usual sixteenth of an inch. */
    static Graduation of(Given given) {
        return Choices.get(
                Graduation.values(), Graduations::id, given.text("graduation", id(Graduation.SIXTEENTH_INCH)));
    }

    /** The word for the graduation with that step. */
    static String idOfStep(Length step) {
        return Stream.of(Graduation.values())
                .filter(graduation -> graduation.step().equals(step))
                .map(Graduations::id)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no graduation of " + step));
    }

    static String id(Graduation graduation) {
        return graduation == Graduation.MILLIMETRE ? "1 mm" : "1/" + graduation.perUnit() + " in";
    }
}
