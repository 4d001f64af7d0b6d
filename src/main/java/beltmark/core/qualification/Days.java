package beltmark.core.qualification;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A set of days, as spans that neither overlap nor touch, in order. */
final class Days {

    /** The first day there is. */
    static final LocalDate FIRST = LocalDate.of(1, 1, 1);
    /** The last day there is, for what never ends. */
    static final LocalDate LAST = LocalDate.of(9999, 12, 31);
    /** No day. */
    static final Days NONE = new Days(List.of());

    private final List<Span> spans;

    private Days(List<Span> spans) {
        this.spans = spans;
    }

    /**
     * Days in a row.
     *
     * @param first the first
     * @param last the last
     */
    record Span(LocalDate first, LocalDate last) {}

    /** {@return the days from a first to a last one; none when the last comes before the first} */
    static Days of(LocalDate first, LocalDate last) {
        return last.isBefore(first) ? NONE : new Days(List.of(new Span(first, last)));
    }

    /** {@return the days that are in any of some sets} */
    static Days union(List<Days> sets) {
        List<Span> sorted = sets.stream()
                .flatMap(set -> set.spans.stream())
                .sorted(Comparator.comparing(Span::first))
                .toList();
        List<Span> merged = new ArrayList<>();
        for (Span span : sorted) {
            Span before = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (before == null || before.last.plusDays(1).isBefore(span.first)) {
                merged.add(span);
            } else if (span.last.isAfter(before.last)) {
                merged.set(merged.size() - 1, new Span(before.first, span.last));
            }
        }
        return new Days(List.copyOf(merged));
    }

    /** {@return the days that are in both} */
    Days and(Days other) {
        List<Span> both = new ArrayList<>();
        for (Span one : spans) {
            for (Span two : other.spans) {
                LocalDate first = one.first.isAfter(two.first) ? one.first : two.first;
                LocalDate last = one.last.isBefore(two.last) ? one.last : two.last;
                if (!last.isBefore(first)) {
                    both.add(new Span(first, last));
                }
            }
        }
        return new Days(List.copyOf(both));
    }

    /** {@return the days that are not in the other one} */
    Days without(Days other) {
        Days rest = this;
        for (Span hole : other.spans) {
            Days before = hole.first.equals(FIRST) ? NONE : of(FIRST, hole.first.minusDays(1));
            Days after = hole.last.equals(LAST) ? NONE : of(hole.last.plusDays(1), LAST);
            rest = rest.and(union(List.of(before, after)));
        }
        return rest;
    }

    boolean contains(LocalDate day) {
        return find(day).isPresent();
    }

    /** {@return the days in a row around one, if it is among them} */
    Optional<Span> find(LocalDate day) {
        return spans.stream()
                .filter(span -> !day.isBefore(span.first) && !day.isAfter(span.last))
                .findFirst();
    }

    /** {@return the last of the days up to one, if there are any} */
    Optional<LocalDate> findLast(LocalDate upTo) {
        return spans.stream()
                .filter(span -> !span.first.isAfter(upTo))
                .reduce((before, after) -> after)
                .map(span -> span.last.isAfter(upTo) ? upTo : span.last);
    }

    boolean isEmpty() {
        return spans.isEmpty();
    }
}
