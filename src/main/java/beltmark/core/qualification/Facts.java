package beltmark.core.qualification;

import java.util.List;

/**
 * What is on record about one person, early and late, in any order. More than was asked about does no harm: what
 * happened or was told later is left out when a person is judged.
 *
 * @param person the person's number
 * @param facts those that concern the person, and those that concern many; of clean problems at least the first ones
 * @param activity the days with something on record: at least those after a gap of {@link Consequence#SHORTEST_ABSENCE}
 *     days, those told after a later one, and the last one up to the day asked about
 */
public record Facts(long person, List<Fact> facts, List<Activity> activity) {

    public Facts {
        facts = List.copyOf(facts);
        activity = List.copyOf(activity);
    }

    /** {@return a person of whom nothing is on record} */
    public static Facts none(long person) {
        return new Facts(person, List.of(), List.of());
    }
}
