package beltmark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import beltmark.core.statistics.DecisionConsistency;
import beltmark.core.statistics.ItemStatistics;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Reliability;
import beltmark.core.statistics.Response;
import beltmark.core.statistics.ResponseCounts;
import beltmark.core.statistics.Scores;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.util.CombinatoricsUtils;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Statistics from counts against the definitions worked on the rows themselves, with Commons Math, on random tables. */
class StatisticsPropertiesTest {

    private static final int PEOPLE = 40;
    private static final int ITEMS = 9;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void correlationsAreThoseOfPearsonAmongThoseWhoReachedTheItem(long seed) {
        List<List<Response>> answers = SampleTables.random(PEOPLE, ITEMS, seed);
        ResponseCounts counts = SampleTables.counted(answers);
        for (int i = 0; i < ITEMS; i++) {
            int item = i;
            List<List<Response>> reached = answers.stream()
                    .filter(row -> row.get(item) != Response.NOT_REACHED)
                    .toList();
            ItemStatistics statistics = ItemStatistics.of(counts, item);
            assertSame(pearson(reached, item, row -> score(row)), statistics.pointBiserial());
            assertSame(pearson(reached, item, row -> score(row) - right(row, item)), statistics.correctedR());
            assertEquals(PEOPLE - reached.size(), statistics.notReached());
        }
    }

    private static double pearson(List<List<Response>> rows, int item, ToDoubleFunction<List<Response>> other) {
        return new PearsonsCorrelation()
                .correlation(
                        rows.stream().mapToDouble(row -> right(row, item)).toArray(),
                        rows.stream().mapToDouble(other).toArray());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void withoutAnItemIsTheTestOfTheOthers(long seed) {
        List<List<Response>> answers = SampleTables.random(PEOPLE, ITEMS, seed);
        ResponseCounts counts = SampleTables.counted(answers);
        for (int item = 0; item < ITEMS; item++) {
            int left = item;
            List<List<Response>> others = answers.stream()
                    .map(row -> IntStream.range(0, ITEMS)
                            .filter(one -> one != left)
                            .mapToObj(row::get)
                            .toList())
                    .toList();
            assertSame(
                    Reliability.kr20(SampleTables.counted(others)).toOptional().orElseThrow(),
                    ItemStatistics.of(counts, item).reliabilityWithout());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void totalsKeptByScoreGiveTheSame(long seed) {
        List<List<Response>> answers = SampleTables.random(PEOPLE, ITEMS, seed);
        ResponseCounts retold = SampleTables.retold(answers);
        for (int item = 0; item < ITEMS; item++) {
            assertEquals(ItemStatistics.of(SampleTables.counted(answers), item), ItemStatistics.of(retold, item));
        }
    }

    /** The double sum of Huynh 1976 as it stands, with the beta function of Commons Math. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 4, 7, 9})
    void decisionsAreTheDoubleSumOfTheModel(int cut) {
        Scores scores =
                SampleTables.counted(SampleTables.random(200, ITEMS, 11)).scores();
        double same = 0;
        for (int x = 0; x <= ITEMS; x++) {
            for (int y = 0; y <= ITEMS; y++) {
                same += (x >= cut) == (y >= cut) ? chance(scores, x, y) : 0;
            }
        }
        assertSame(same, DecisionConsistency.of(scores, cut).agreement());
    }

    private static double chance(Scores scores, int x, int y) {
        double mean = scores.mean().toOptional().orElseThrow();
        double kr21 = Reliability.kr21(scores).toOptional().orElseThrow();
        double a = (1 / kr21 - 1) * mean;
        double b = -a + ITEMS / kr21 - ITEMS;
        return CombinatoricsUtils.binomialCoefficientDouble(ITEMS, x)
                * CombinatoricsUtils.binomialCoefficientDouble(ITEMS, y)
                * Math.exp(Beta.logBeta(a + x + y, b + 2 * ITEMS - x - y) - Beta.logBeta(a, b));
    }

    private static double score(List<Response> row) {
        return IntStream.range(0, row.size())
                .mapToDouble(item -> right(row, item))
                .sum();
    }

    private static double right(List<Response> row, int item) {
        return row.get(item) == Response.RIGHT ? 1 : 0;
    }

    private static void assertSame(double expected, Measure actual) {
        assertEquals(expected, actual.toOptional().orElseThrow(), 1e-9);
    }
}
