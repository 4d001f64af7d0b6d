package beltmark.core.qualification;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the records say about one person. Whoever asks about an earlier date leaves out the clean problems of later ones;
 * dated facts that lie after the date asked about are ignored.
 *
 * @param person the person's number
 * @param clean how many problems were worked clean, by family
 * @param quizPassed the dates on which the quiz was passed
 * @param demonstrations the demonstrations that were signed
 * @param holds when the person was held back
 */
public record Facts(
        long person,
        Map<String, Integer> clean,
        List<LocalDate> quizPassed,
        List<Demonstration> demonstrations,
        List<Hold> holds) {

    /**
     * A demonstration that was signed.
     *
     * @param on the date on which it was shown
     * @param card the id of the hardware card
     * @param assessor the number of the person who signed
     */
    public record Demonstration(LocalDate on, String card, long assessor) {}

    /**
     * A time of being held back.
     *
     * @param from its first day
     * @param to its last day, empty while it lasts
     */
    public record Hold(LocalDate from, Optional<LocalDate> to) {

        boolean covers(LocalDate date) {
            return !date.isBefore(from) && to.map(last -> !date.isAfter(last)).orElse(true);
        }
    }

    public Facts {
        clean = Map.copyOf(clean);
        quizPassed = List.copyOf(quizPassed);
        demonstrations = List.copyOf(demonstrations);
        holds = List.copyOf(holds);
    }

    /** {@return the dates of the demonstrations on a card that another person signed} */
    List<LocalDate> demonstratedOn(String card) {
        return demonstrations.stream()
                .filter(one -> one.card().equals(card) && one.assessor() != person)
                .map(Demonstration::on)
                .toList();
    }

    /** {@return the hold that covers a date and began last} */
    Optional<Hold> findHold(LocalDate date) {
        return holds.stream()
                .filter(hold -> hold.covers(date))
                .reduce((a, b) -> a.from().isAfter(b.from()) ? a : b);
    }
}
