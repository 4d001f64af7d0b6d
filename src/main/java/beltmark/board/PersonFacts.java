package beltmark.board;

import beltmark.core.qualification.Fact;
import beltmark.core.qualification.FactKind;
import beltmark.core.qualification.Judge;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the board shows of one person, as of its day.
 *
 * @param judge judges the person, and knows what counts
 * @param begun the families of which at least one problem is finished
 * @param sat the last day on which each quiz was finished, passed or not
 */
record PersonFacts(Judge judge, Set<String> begun, Map<String, LocalDate> sat) {

    PersonFacts {
        begun = Set.copyOf(begun);
        sat = Map.copyOf(sat);
    }

    /** {@return how many of the first problems of a family are clean; later ones are not counted} */
    int clean(String family) {
        return judge.list(FactKind.CLEAN, family).size();
    }

    /** {@return the last day that counts for something} */
    Optional<LocalDate> findLast(FactKind kind, String subject) {
        List<Fact> facts = judge.list(kind, subject);
        return facts.isEmpty()
                ? Optional.empty()
                : Optional.of(facts.get(facts.size() - 1).on());
    }
}
