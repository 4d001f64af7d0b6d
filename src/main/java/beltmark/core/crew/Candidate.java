package beltmark.core.crew;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Comparator;
import java.util.Map;

/**
 * Somebody who could take a place.
 *
 * @param person the person's number
 * @param name as it is shown; people with the same last day go by name, then by number
 * @param lastDays the last day of each qualification that the person has on the day of the job, at least one
 */
public record Candidate(long person, String name, Map<String, LocalDate> lastDays) {

    /** Whoever stays qualified longest first, by the qualification that runs out first. */
    static final Comparator<Candidate> LONGEST_FIRST = Comparator.comparing(Candidate::firstToEnd)
            .reversed()
            .thenComparing(Candidate::name)
            .thenComparingLong(Candidate::person);

    public Candidate {
        lastDays = Map.copyOf(lastDays);
        if (lastDays.isEmpty()) {
            throw new IllegalArgumentException("person " + person + " is qualified for no place");
        }
    }

    /** {@return whether the person could take a place of that qualification} */
    public boolean canTake(String qualification) {
        return lastDays.containsKey(qualification);
    }

    /** {@return the last day of a qualification that the person has} */
    public LocalDate lastDay(String qualification) {
        LocalDate day = lastDays.get(qualification);
        if (day == null) {
            throw new IllegalArgumentException("person " + person + " is not qualified for " + qualification);
        }
        return day;
    }

    private LocalDate firstToEnd() {
        return Collections.min(lastDays.values());
    }
}
