package beltmark.board;

import beltmark.core.qualification.Facts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the records say about one person, as the board needs it.
 *
 * @param person the person's number
 * @param worked the problems worked, by family
 * @param quizzes each sitting of a quiz that was finished
 * @param shown each demonstration that was signed
 */
record PersonFacts(long person, Map<String, Worked> worked, List<Sat> quizzes, List<Shown> shown) {

    /**
     * Problems of one family.
     *
     * @param finished how many were finished
     * @param clean how many of them clean
     * @param lastClean the day of the last clean one, empty when there is none
     */
    record Worked(int finished, int clean, Optional<LocalDate> lastClean) {}

    /**
     * A finished sitting.
     *
     * @param quiz the id of the quiz
     * @param passed whether it was passed
     * @param on the day
     */
    record Sat(String quiz, boolean passed, LocalDate on) {}

    /**
     * A signed demonstration.
     *
     * @param card the id of the hardware card
     * @param assessor who signed
     * @param on the day it was shown
     */
    record Shown(String card, long assessor, LocalDate on) {}

    /** {@return facts to be filled in} */
    static PersonFacts of(long person) {
        return new PersonFacts(person, new HashMap<>(), new ArrayList<>(), new ArrayList<>());
    }

    Worked worked(String family) {
        return worked.getOrDefault(family, new Worked(0, 0, Optional.empty()));
    }

    Optional<LocalDate> lastPassed(String quiz) {
        return quizzes.stream()
                .filter(sat -> sat.quiz().equals(quiz) && sat.passed())
                .map(Sat::on)
                .max(Comparator.naturalOrder());
    }

    Optional<LocalDate> lastSat(String quiz) {
        return quizzes.stream()
                .filter(sat -> sat.quiz().equals(quiz))
                .map(Sat::on)
                .max(Comparator.naturalOrder());
    }

    Optional<LocalDate> lastShown(String card) {
        return shown.stream()
                .filter(one -> one.card().equals(card))
                .map(Shown::on)
                .max(Comparator.naturalOrder());
    }

    /** {@return the same as the core judges it by, for a rule with that quiz} */
    Facts toFacts(String quiz) {
        Map<String, Integer> clean = new HashMap<>();
        worked.forEach((family, some) -> clean.put(family, some.clean()));
        return new Facts(
                person,
                clean,
                quizzes.stream()
                        .filter(sat -> sat.quiz().equals(quiz) && sat.passed())
                        .map(Sat::on)
                        .toList(),
                shown.stream()
                        .map(one -> new Facts.Demonstration(one.on(), one.card(), one.assessor()))
                        .toList(),
                List.of());
    }
}
