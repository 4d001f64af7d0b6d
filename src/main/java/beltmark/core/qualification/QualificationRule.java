package beltmark.core.qualification;

import java.util.List;

/**
 * What a person needs to be qualified on one hardware card: site policy, read from a rule file. An age of n days means
 * that the n-th day after is the last that counts.
 *
 * @param id the rule's hyphenated name
 * @param version counts up with every change of the rule
 * @param card the id of the hardware card
 * @param clean problems worked clean; they do not age
 * @param quiz the id of the quiz
 * @param quizDays how long a pass of the quiz counts, at least 1
 * @param demonstrations how many demonstrations on the card, signed by another person, at least 1
 * @param lifeDays how long a demonstration counts, at least 1
 * @param dueSoonDays from how many days before the last one the qualification is due soon; 0 or more, less than the ages
 */
public record QualificationRule(
        String id,
        int version,
        String card,
        List<CleanNeed> clean,
        String quiz,
        int quizDays,
        int demonstrations,
        int lifeDays,
        int dueSoonDays) {

    public QualificationRule {
        clean = List.copyOf(clean);
        requireAtLeast("quizDays", quizDays, 1);
        requireAtLeast("demonstrations", demonstrations, 1);
        requireAtLeast("lifeDays", lifeDays, 1);
        requireAtLeast("dueSoonDays", dueSoonDays, 0);
        if (dueSoonDays >= Math.min(quizDays, lifeDays)) {
            throw new IllegalArgumentException("due soon " + dueSoonDays + " days ahead, though a need lasts only "
                    + Math.min(quizDays, lifeDays));
        }
    }

    private static void requireAtLeast(String what, int value, int least) {
        if (value < least) {
            throw new IllegalArgumentException(what + " is " + value + ", not at least " + least);
        }
    }
}
