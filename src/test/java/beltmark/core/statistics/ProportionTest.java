package beltmark.core.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

    // worked by hand from the formula of Wilson 1927 to four places
    @ParameterizedTest
    @CsvSource({"5, 5, .5655, 1", "8, 8, .6756, 1", "4, 5, .3755, .9638", "10, 10, .7225, 1", "0, 10, 0, .2775"})
    void givesTheIntervalOfWilson(long hits, long trials, double low, double high) {
        Interval interval = new Proportion(hits, trials).wilson95().orElseThrow();

        assertEquals(low, interval.low(), 0.00005);
        assertEquals(high, interval.high(), 0.00005);
    }

    @Test
    void agreesWithCommonsMathForEveryCountUpToSixty() {
        for (int trials = 1; trials <= 60; trials++) {
            for (int hits = 0; hits <= trials; hits++) {
                ConfidenceInterval expected = new WilsonScoreInterval().createInterval(trials, hits, 0.95);
                Interval interval = new Proportion(hits, trials).wilson95().orElseThrow();
                assertEquals(expected.getLowerBound(), interval.low(), 1e-9);
                assertEquals(expected.getUpperBound(), interval.high(), 1e-9);
            }
        }
    }

    @Test
    void ofNothingNeitherShareNorIntervalCanBeComputed() {
        assertEquals(Optional.empty(), new Proportion(0, 0).share());
        assertEquals(Optional.empty(), new Proportion(0, 0).wilson95());
    }

    @Test
    void intervalHoldsTheShareAndMirrors() {
        for (int trials = 1; trials <= 200; trials++) {
            for (int hits = 0; hits <= trials; hits++) {
                Interval interval = new Proportion(hits, trials).wilson95().orElseThrow();
                Interval mirrored =
                        new Proportion(trials - hits, trials).wilson95().orElseThrow();
                double share = (double) hits / trials;
                assertTrue(interval.low() <= share && share <= interval.high());
                assertEquals(1 - interval.high(), mirrored.low(), 1e-12);
            }
        }
    }

    @Test
    void aGroupIsLargeEnoughFromTen() {
        assertFalse(new Proportion(9, 9).isLargeEnough());
        assertTrue(new Proportion(0, 10).isLargeEnough());
    }

    @ParameterizedTest
    @CsvSource({"-1, 5", "6, 5", "0, -1"})
    void refusesCountsThatCannotBe(long hits, long trials) {
        assertThrows(IllegalArgumentException.class, () -> new Proportion(hits, trials));
    }
}
