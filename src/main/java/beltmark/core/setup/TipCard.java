package beltmark.core.setup;

import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * What a hardware card says for one tip.
 *
 * @param overslungOffset how far the top of the tensioner goes above the belt mark when overslung
 * @param underslungOffset how far the mounting base goes above the belt mark when underslung
 * @param chart the spring length for each blade, shortest blade first
 */
public record TipCard(Length overslungOffset, Length underslungOffset, List<Setting> chart) {

    /**
     * One row of the chart.
     *
     * @param blade the length of the blade
     * @param springLength from the top of the washer to the top of the base, the same on both sides
     */
    public record Setting(Length blade, Length springLength) {}

    public TipCard {
        chart = List.copyOf(chart);
    }

    /** {@return how far above the belt mark the datum edge goes} */
    public Length offset(Orientation orientation) {
        return orientation == Orientation.OVERSLUNG ? overslungOffset : underslungOffset;
    }

    /**
     * {@return the chart's blade that a measured one is, or the measured length itself when it is none of them} A chart in
     * millimetres is read with an inch tape too: what is off by no more than half a sixteenth is the same blade.
     */
    public Length chartBlade(Length measured) {
        Length half = Graduation.THIRTY_SECOND_INCH.step();
        return chart.stream()
                .map(Setting::blade)
                .filter(blade -> blade.isWithin(half, measured))
                .findFirst()
                .orElse(measured);
    }

    /** {@return the spring length the chart gives for a blade, or empty when the chart has no such blade} */
    public Optional<Length> springLength(Length blade) {
        return chart.stream()
                .filter(row -> row.blade().equals(blade))
                .map(Setting::springLength)
                .findFirst();
    }
}
