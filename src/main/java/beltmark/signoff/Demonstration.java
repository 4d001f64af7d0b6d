package beltmark.signoff;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A demonstration as it was read from the form, every field readable and every observation answered.
 *
 * @param rig the hardware
 * @param place where and when
 * @param watched what was seen
 * @param measured what was measured; null when the demonstration was not passed and not all was measured
 * @param explanations why something beyond its tolerance stays as it is, by the name of what it is
 * @param trained whether the assessor says to have trained the person on this hardware
 * @param typed the form as typed, by field
 */
public record Demonstration(
        Rig rig,
        Place place,
        Watched watched,
        @Nullable EndMeasures measured,
        Map<String, String> explanations,
        boolean trained,
        Map<String, String> typed) {

    public Demonstration {
        explanations = Map.copyOf(explanations);
        typed = Map.copyOf(typed);
    }

    /**
     * Where and when a set-up was shown.
     *
     * @param conveyor where
     * @param on the day at the site
     * @param enteredAt when the form was filled in, by the clock of the device; null when it did not say
     */
    public record Place(
            String conveyor, LocalDate on, @Nullable Instant enteredAt) {}

    /** {@return the day at the site} */
    LocalDate on() {
        return place.on();
    }

    boolean isPassed() {
        return watched.isPassed();
    }

    Optional<Findings> findings() {
        return Optional.ofNullable(measured).map(some -> Findings.of(rig, watched.checklist(), some));
    }

    /** {@return what is beyond its tolerance} */
    List<String> beyond() {
        return findings().map(Findings::beyond).orElse(List.of());
    }

    /** {@return what is beyond its tolerance and neither corrected nor explained, while that is asked for} */
    List<String> unexplained() {
        return isPassed()
                ? beyond().stream()
                        .filter(name -> !explanations.containsKey(name))
                        .toList()
                : List.of();
    }

    /** {@return what signing this says} */
    Outcome outcome() {
        return !isPassed() ? Outcome.NOT_PASSED : beyond().isEmpty() ? Outcome.WITHIN : Outcome.EXPLAINED;
    }

    /** How a demonstration came out. */
    enum Outcome {
        /** Everything is as it should be. */
        WITHIN("within"),
        /** Passed; what is beyond its tolerance is explained. */
        EXPLAINED("explained"),
        /** A critical observation was missed. */
        NOT_PASSED("not-passed");

        private final String id;

        Outcome(String id) {
            this.id = id;
        }

        String id() {
            return id;
        }
    }
}
