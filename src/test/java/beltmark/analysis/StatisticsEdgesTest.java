package beltmark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.statistics.Bounds;
import beltmark.core.statistics.DecisionConsistency;
import beltmark.core.statistics.ItemStatistics;
import beltmark.core.statistics.JudgedCut;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Reliability;
import beltmark.core.statistics.ResponseCounts;
import beltmark.core.statistics.Scores;
import beltmark.core.statistics.Undefined;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StatisticsEdgesTest {

    @Test
    void ofPeopleWhoHaveAllRightNothingIsTold() {
        ResponseCounts counts = SampleTables.typed("1,1,1 1,1,1 1,1,1");
        ItemStatistics item = ItemStatistics.of(counts, 0);

        assertEquals(Measure.of(1), item.share());
        assertEquals(Undefined.CONSTANT_ITEM, item.pointBiserial().undefined());
        assertEquals(Undefined.CONSTANT_ITEM, item.correctedR().undefined());
        assertEquals(Undefined.CONSTANT_SCORES, Reliability.kr20(counts).undefined());
        assertEquals(
                Undefined.CONSTANT_SCORES, Reliability.kr21(counts.scores()).undefined());
        assertEquals(
                Undefined.CONSTANT_SCORES,
                DecisionConsistency.of(counts.scores(), 2).agreement().undefined());
    }

    @Test
    void ofPeopleWhoHaveAllWrongNothingIsTold() {
        ResponseCounts counts = SampleTables.typed("0,0,0 0,0,0");

        assertEquals(Measure.of(0), ItemStatistics.of(counts, 2).share());
        assertEquals(Measure.of(0), Reliability.meanLordStandardError(counts.scores()));
        assertEquals(Undefined.CONSTANT_SCORES, Reliability.kr20(counts).undefined());
    }

    @Test
    void onePersonHasNoSpread() {
        ResponseCounts counts = SampleTables.typed("1,0,1");
        ItemStatistics item = ItemStatistics.of(counts, 0);

        assertEquals(Undefined.ONE_PERSON, item.pointBiserial().undefined());
        assertEquals(Undefined.ONE_PERSON, item.discrimination().undefined());
        assertEquals(Undefined.ONE_PERSON, counts.scores().sampleDeviation().undefined());
        assertEquals(Undefined.ONE_PERSON, Reliability.kr20(counts).undefined());
    }

    @Test
    void nobodyHasNothing() {
        ResponseCounts counts = new ResponseCounts(3);
        ItemStatistics item = ItemStatistics.of(counts, 0);

        assertEquals(Undefined.NOBODY, item.share().undefined());
        assertEquals(Undefined.NOBODY, item.correctedR().undefined());
        assertEquals(Undefined.NOBODY, counts.scores().mean().undefined());
        assertEquals(Undefined.NOBODY, Reliability.kr20(counts).undefined());
        assertEquals(Undefined.NOBODY, Reliability.kr21(counts.scores()).undefined());
        assertEquals(
                Undefined.NOBODY,
                Reliability.meanLordStandardError(counts.scores()).undefined());
    }

    @Test
    void oneItemCannotAgreeWithOthers() {
        ResponseCounts counts = SampleTables.typed("1 0 1");

        assertEquals(Undefined.ONE_ITEM, Reliability.kr20(counts).undefined());
        assertEquals(Undefined.ONE_ITEM, Reliability.lordStandardError(1, 1).undefined());
        assertEquals(
                Undefined.CONSTANT_REST,
                ItemStatistics.of(counts, 0).correctedR().undefined());
    }

    @Test
    void aBlankIsWrongInTheScoreAndNotCountedInTheItem() {
        ResponseCounts counts = SampleTables.typed("1,1,1 1,0,0 0,1, 1,,");
        ItemStatistics last = ItemStatistics.of(counts, 2);

        assertEquals(2, last.hits().trials());
        assertEquals(2, last.notReached());
        assertEquals(Measure.of(0.5), last.share());
        assertEquals(Measure.of(1.5), counts.scores().mean());
        assertEquals(
                Undefined.NOBODY,
                ItemStatistics.of(SampleTables.typed("1, 0,"), 1).share().undefined());
    }

    @Test
    void scoresOfNothingOrEverythingHaveNoModel() {
        Scores scores = Scores.of(10, 0, 0, 10);

        assertEquals(1, Reliability.kr21(scores).toOptional().orElseThrow(), 1e-12);
        assertEquals(
                Undefined.KR21_IS_ONE, DecisionConsistency.of(scores, 2).kappa().undefined());
    }

    @Test
    void atACutOfNothingEverybodyAgreesAndKappaIsNotComputable() {
        DecisionConsistency twice =
                DecisionConsistency.of(SampleTables.get("five-items").scores(), 0);

        assertEquals(1, twice.passing().toOptional().orElseThrow(), 1e-9);
        assertEquals(1, twice.agreement().toOptional().orElseThrow(), 1e-9);
        assertEquals(Undefined.ONE_SIDE, twice.kappa().undefined());
    }

    @Test
    void theHighestCutIsEveryItem() {
        Scores scores = SampleTables.get("five-items").scores();

        assertTrue(DecisionConsistency.of(scores, 5).kappa().toOptional().isPresent());
        assertThrows(IllegalArgumentException.class, () -> DecisionConsistency.of(scores, 6));
        assertThrows(IllegalArgumentException.class, () -> DecisionConsistency.of(scores, -1));
    }

    @Test
    void aLongTestDoesNotOverflow() {
        long[] people = new long[1501];
        Arrays.fill(people, 300, 1200, 1);

        double agreement = DecisionConsistency.of(Scores.of(people), 750)
                .agreement()
                .toOptional()
                .orElseThrow();

        assertTrue(agreement > 0.5 && agreement < 1, () -> "p0 " + agreement);
    }

    // published: alpha .913 of 873 people on 20 items (Feldt, Woodruff and Salih's interval)
    @Test
    void feldtGivesThePublishedInterval() {
        Bounds interval = Feldt.interval95(0.913, 873, 20).orElseThrow();

        assertEquals(0.9044024, interval.low(), 5e-8);
        assertEquals(0.9211588, interval.high(), 5e-8);
        assertEquals(Optional.empty(), Feldt.interval95(0.5, 1, 20));
        assertEquals(Optional.empty(), Feldt.interval95(0.5, 20, 1));
    }

    // r = .5 of 28 people: artanh .5 = .5493, 1.96/5 = .3920, so tanh .1573 to tanh .9413; by hand
    @Test
    void fisherGivesTheIntervalOfACorrelation() {
        Bounds interval = Bounds.ofCorrelation(0.5, 28);

        assertEquals(0.1560, interval.low(), 5e-5);
        assertEquals(0.7358, interval.high(), 5e-5);
        assertEquals(new Bounds(1, 1), Bounds.ofCorrelation(1, 28));
    }

    @Test
    void aCutOfTenthsIsNotRaisedByRounding() {
        assertEquals(3, JudgedCut.of(List.of(List.of(0.9, 0.7, 0.8, 0.6))).least());
        assertEquals(
                Undefined.ONE_PERSON,
                JudgedCut.of(List.of(List.of(0.5, 0.7))).standardError().undefined());
    }
}
