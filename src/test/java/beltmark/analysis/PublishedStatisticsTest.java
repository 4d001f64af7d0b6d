package beltmark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import beltmark.core.statistics.Bounds;
import beltmark.core.statistics.DecisionConsistency;
import beltmark.core.statistics.Interval;
import beltmark.core.statistics.ItemStatistics;
import beltmark.core.statistics.JudgedCut;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Reliability;
import beltmark.core.statistics.ResponseCounts;
import beltmark.core.statistics.Scores;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every value of the tables below {@code analysis}, whose sources its README names. */
class PublishedStatisticsTest {

    /** Ten decimals are printed there. */
    private static final double PRINTED = 1e-9;

    static Stream<CSVRecord> items() {
        return SampleTables.rows("/analysis/expected-item-stats.csv");
    }

    @ParameterizedTest
    @MethodSource("items")
    void ofItems(CSVRecord row) {
        ResponseCounts counts = SampleTables.get(row.get("dataset"));
        int item = Integer.parseInt(row.get("item").substring(1)) - 1;

        ItemStatistics statistics = ItemStatistics.of(counts, item);

        assertCount(row.get("N"), statistics.hits().trials());
        assertCount(row.get("n_correct"), statistics.hits().hits());
        assertSame(row.get("p"), statistics.share());
        assertSame(row.get("r_item_total"), statistics.pointBiserial());
        assertSame(row.get("r_item_rest"), statistics.correctedR());
        assertSame(row.get("D27_fractional"), statistics.discrimination());
        assertSame(row.get("alpha_if_deleted"), statistics.reliabilityWithout());
    }

    static Stream<CSVRecord> tests() {
        return SampleTables.rows("/analysis/expected-test-stats.csv");
    }

    @ParameterizedTest
    @MethodSource("tests")
    void ofTests(CSVRecord row) {
        ResponseCounts counts = SampleTables.get(row.get("dataset"));
        Scores scores = counts.scores();
        Measure kr20 = Reliability.kr20(counts);

        assertCount(row.get("N"), scores.people());
        assertCount(row.get("k"), scores.items());
        assertSame(row.get("mean"), scores.mean());
        assertSame(row.get("sd_pop"), scores.deviation());
        assertSame(row.get("sd_sample"), scores.sampleDeviation());
        assertSame(row.get("alpha_KR20"), kr20);
        assertSame(row.get("feldt_lo95"), kr20.map(alpha -> feldt(alpha, scores).low()));
        assertSame(row.get("feldt_hi95"), kr20.map(alpha -> feldt(alpha, scores).high()));
        assertSame(row.get("KR21_popvar"), Reliability.kr21(scores));
        assertSame(row.get("SEM_sd_sample"), Reliability.standardError(scores, kr20));
        assertSame(row.get("mean_Lord_SEM"), Reliability.meanLordStandardError(scores));
    }

    private static Bounds feldt(double alpha, Scores scores) {
        return Feldt.interval95(alpha, scores.people(), scores.items()).orElseThrow();
    }

    static Stream<CSVRecord> decisions() {
        return SampleTables.rows("/analysis/expected-decision-consistency.csv");
    }

    @ParameterizedTest
    @MethodSource("decisions")
    void ofDecisions(CSVRecord row) {
        Scores scores = SampleTables.get(row.get("dataset")).scores();
        int cut = Integer.parseInt(row.get("cut"));

        DecisionConsistency twice = DecisionConsistency.of(scores, cut);

        assertCount(row.get("obs_pass"), scores.passing(cut).hits());
        assertSame(row.get("huynh_p0"), twice.agreement());
        assertSame(row.get("huynh_kappa"), twice.kappa());
        assertSame(row.get("huynh_ppass"), twice.passing());
    }

    @Test
    void ofJudges() {
        List<List<Double>> ratings = SampleTables.rows("/analysis/judges.csv")
                .map(row -> row.stream().skip(1).map(Double::valueOf).toList())
                .toList();
        Map<String, String> expected = SampleTables.rows("/analysis/expected-angoff.csv")
                .collect(Collectors.toMap(row -> row.get("statistic"), row -> row.get("value")));

        JudgedCut cut = JudgedCut.of(ratings);

        assertSame(expected.getOrDefault("cut_raw", ""), Measure.of(cut.score()));
        assertSame(expected.getOrDefault("sd_of_judge_sums", ""), cut.deviation());
        assertSame(expected.getOrDefault("SE_judges", ""), cut.standardError());
        assertCount(expected.getOrDefault("cut_ceil", ""), cut.least());
    }

    static Stream<CSVRecord> shares() {
        return SampleTables.rows("/analysis/expected-wilson.csv")
                .filter(row -> row.get("conf").equals("0.95"));
    }

    @ParameterizedTest
    @MethodSource("shares")
    void ofShares(CSVRecord row) {
        Proportion proportion = new Proportion(Long.parseLong(row.get("k")), Long.parseLong(row.get("n")));

        Interval interval = proportion.wilson95().orElseThrow();

        assertSame(row.get("wilson_lo"), Measure.of(interval.low()));
        assertSame(row.get("wilson_hi"), Measure.of(interval.high()));
    }

    private static void assertCount(String expected, long actual) {
        assertEquals(Long.parseLong(expected), actual);
    }

    /** An empty cell stands for what is not defined. */
    private static void assertSame(String expected, Measure actual) {
        if (expected.isEmpty()) {
            assertNull(actual.value());
        } else {
            assertEquals(Double.parseDouble(expected), actual.toOptional().orElseThrow(), PRINTED);
        }
    }
}
