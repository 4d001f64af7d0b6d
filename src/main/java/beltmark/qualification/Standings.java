package beltmark.qualification;

import beltmark.core.qualification.Activity;
import beltmark.core.qualification.CleanNeed;
import beltmark.core.qualification.Fact;
import beltmark.core.qualification.Facts;
import beltmark.core.qualification.Judge;
import beltmark.core.qualification.Rules;
import beltmark.core.qualification.Standing;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/**
 * Where people stand, read from the facts on record. What is read of a person does not grow with the number of answers:
 * the first clean problems of each family, what was passed, shown or ordered, and the long gaps between days of work.
 */
public final class Standings {

    private final Rules rules;
    private final FactReadStore store = new FactReadStore();

    /** @param rules all rules */
    public Standings(Rules rules) {
        this.rules = rules;
    }

    /**
     * {@return where a person stands with a qualification}
     *
     * @param on the day asked about, past or future
     * @param asKnownAt the moment whose knowledge is asked for
     */
    public Standing of(Handle handle, long person, String qualification, LocalDate on, Instant asKnownAt) {
        return judge(handle, person, on, asKnownAt).standing(qualification);
    }

    /** {@return the judge of one person} */
    public Judge judge(Handle handle, long person, LocalDate on, Instant asKnownAt) {
        Facts facts = mapFacts(handle, List.of(person), on, asKnownAt).getOrDefault(person, Facts.none(person));
        return new Judge(rules, facts, on, asKnownAt);
    }

    /**
     * {@return a judge for each person, in the order given; five statements for however many people}
     *
     * @param mostClean how many clean problems of each family are read; {@link #mostClean()} to judge by
     */
    public Map<Long, Judge> judges(
            Handle handle, Collection<Long> people, LocalDate on, Instant asKnownAt, int mostClean) {
        Map<Long, Judge> judges = new LinkedHashMap<>();
        mapFacts(handle, people, on, asKnownAt, mostClean)
                .forEach((person, facts) -> judges.put(person, new Judge(rules, facts, on, asKnownAt)));
        return judges;
    }

    /** {@return what is on record about each person, for any day up to the one given} */
    public Map<Long, Facts> mapFacts(Handle handle, Collection<Long> people, LocalDate on, Instant asKnownAt) {
        return mapFacts(handle, people, on, asKnownAt, mostClean());
    }

    /** {@return how many clean problems of a family any rule asks for} */
    public int mostClean() {
        return rules.all().stream()
                .flatMap(rule -> rule.needs().clean().stream())
                .mapToInt(CleanNeed::count)
                .max()
                .orElse(0);
    }

    private Map<Long, Facts> mapFacts(
            Handle handle, Collection<Long> people, LocalDate on, Instant asKnownAt, int mostClean) {
        List<Fact> forMany = store.listForMany(handle, asKnownAt);
        Map<Long, List<Fact>> own = store.mapOwn(handle, people, asKnownAt, mostClean);
        Map<Long, List<Activity>> activity = store.mapActivity(handle, people, on, asKnownAt);
        Map<Long, Facts> facts = new LinkedHashMap<>();
        for (long person : people) {
            List<Fact> all = new ArrayList<>(own.getOrDefault(person, List.of()));
            all.addAll(forMany);
            facts.put(person, new Facts(person, all, activity.getOrDefault(person, List.of())));
        }
        return facts;
    }
}
