package beltmark.core.qualification;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a person needs to be qualified, in one version: site policy, read from a rule file.
 *
 * @param id the hyphenated name of the qualification
 * @param version counts up with every change of the rule
 * @param validFrom the first day of this version; it ends the day before the next one begins
 * @param card the id of the hardware card it is for, empty when it is for none
 * @param procedures the ids of the procedures it hangs on; an event of one of them concerns it
 * @param needs what must be met
 * @param consequences what events lead to; an event that is not named here leads to nothing
 * @param dueSoonDays from how many days before the last one the qualification is due soon; 0 or more, less than any need
 *     counts
 */
public record QualificationRule(
        String id,
        int version,
        LocalDate validFrom,
        Optional<String> card,
        List<String> procedures,
        Needs needs,
        List<Consequence> consequences,
        int dueSoonDays) {

    public QualificationRule {
        procedures = List.copyOf(procedures);
        consequences = List.copyOf(consequences);
        int shortest = needs.findShortestDays().orElse(Integer.MAX_VALUE);
        if (dueSoonDays < 0 || dueSoonDays >= shortest) {
            throw new IllegalArgumentException(
                    "due soon " + dueSoonDays + " days ahead, though a need lasts only " + shortest);
        }
        if (needs.demonstrations().isPresent() && card.isEmpty()) {
            throw new IllegalArgumentException("demonstrations without a card to show them on");
        }
    }

    /** {@return whether a fact of that scope concerns a person by this rule} */
    boolean isConcernedBy(Scope scope, long person) {
        return switch (scope.reach()) {
            case PERSON -> scope.person() == person;
            case CARD -> card.filter(scope.id()::equals).isPresent();
            case PROCEDURE -> procedures.contains(scope.id());
            case ALL -> true;
        };
    }

    /** {@return how many days may go by without anything on record; empty when it does not matter} */
    OptionalInt findAbsenceDays() {
        return consequences.stream()
                .filter(one -> one.event() == EventKind.LONG_ABSENCE)
                .mapToInt(Consequence::afterDays)
                .min();
    }
}
