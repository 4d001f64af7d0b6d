package beltmark.core.qualification;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Days on which a need is met, the first and the last included.
 *
 * @param first the first
 * @param last the last
 */
record Span(LocalDate first, LocalDate last) {

    /** {@return for events that each count for some days after, the span of days on which enough count together} */
    static List<Span> of(List<LocalDate> events, int need, int days) {
        List<LocalDate> sorted = events.stream().sorted().toList();
        return IntStream.rangeClosed(need, sorted.size())
                .mapToObj(end ->
                        new Span(sorted.get(end - 1), sorted.get(end - need).plusDays(days)))
                .filter(span -> !span.last.isBefore(span.first))
                .toList();
    }

    boolean covers(LocalDate date) {
        return !date.isBefore(first) && !date.isAfter(last);
    }

    Optional<Span> overlap(Span other) {
        LocalDate from = first.isAfter(other.first) ? first : other.first;
        LocalDate to = last.isBefore(other.last) ? last : other.last;
        return to.isBefore(from) ? Optional.empty() : Optional.of(new Span(from, to));
    }

    /** {@return the span that ends last} */
    static Optional<Span> latest(List<Span> spans) {
        return spans.stream().max(Comparator.comparing(Span::last));
    }
}
