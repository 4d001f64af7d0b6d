package beltmark.cli;

import beltmark.analysis.Feldt;
import beltmark.analysis.ResponseTable;
import beltmark.core.statistics.DecisionConsistency;
import beltmark.core.statistics.ItemFlag;
import beltmark.core.statistics.ItemStatistics;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Reliability;
import beltmark.core.statistics.ResponseCounts;
import beltmark.core.statistics.Scores;
import beltmark.core.statistics.Undefined;
import beltmark.texts.Words;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The statistics of a table of answers. A statistic that is not defined is null, and {@code undefined} beside it says why.
 *
 * @param rules what was counted how
 * @param layout how the file was read
 * @param test the test as a whole
 * @param scores how many people have each score that occurs
 * @param items the items, in order
 */
record AnalysisJson(
        List<String> rules, LayoutJson layout, Map<String, Object> test, List<ScoreJson> scores, List<Object> items) {

    static AnalysisJson of(ResponseTable table, @Nullable Integer cut, Words words) {
        ResponseCounts counts = table.counts();
        return new AnalysisJson(
                List.of(words.say("analyse.rule.blank"), words.say("analyse.rule.variance")),
                new LayoutJson(table.hasHeader(), table.idColumn().orElse(null), table.blankRows()),
                test(counts, cut, words),
                scores(counts.scores()),
                IntStream.range(0, counts.items())
                        .<Object>mapToObj(item -> item(table, item, words))
                        .toList());
    }

    private static Map<String, Object> test(ResponseCounts counts, @Nullable Integer cut, Words words) {
        Scores scores = counts.scores();
        Measure kr20 = Reliability.kr20(counts);
        Measures test = new Measures(words);
        test.put("n", scores.people());
        test.put("k", counts.items());
        test.put("mean", scores.mean());
        test.put("sd", scores.deviation());
        test.put("sdSample", scores.sampleDeviation());
        test.put("kr20", kr20);
        test.put(
                "feldt",
                kr20,
                value ->
                        Feldt.interval95(value, scores.people(), counts.items()).orElseThrow());
        test.put("kr21", Reliability.kr21(scores));
        test.put("sem", Reliability.standardError(scores, kr20));
        test.put("meanLordSem", Reliability.meanLordStandardError(scores));
        putCut(test, scores, cut);
        return test.toMap();
    }

    private static void putCut(Measures test, Scores scores, @Nullable Integer cut) {
        DecisionConsistency twice =
                cut == null ? DecisionConsistency.undefined(Undefined.NO_CUT) : DecisionConsistency.of(scores, cut);
        Measure given = cut == null ? Measure.undefined(Undefined.NO_CUT) : Measure.of(cut);
        test.put("cut", given, Math::round);
        test.put("passed", given, least -> scores.passing((int) least).hits());
        test.put("huynhPassing", twice.passing());
        test.put("huynhP0", twice.agreement());
        test.put("huynhKappa", twice.kappa());
    }

    private static List<ScoreJson> scores(Scores scores) {
        return IntStream.rangeClosed(0, scores.items())
                .filter(score -> scores.at(score) > 0)
                .mapToObj(score -> ScoreJson.of(score, scores))
                .toList();
    }

    private static Map<String, Object> item(ResponseTable table, int number, Words words) {
        ItemStatistics statistics = ItemStatistics.of(table.counts(), number);
        Proportion hits = statistics.hits();
        Measures item = new Measures(words);
        item.put("item", table.items().get(number));
        item.put("n", hits.trials());
        item.put("correct", hits.hits());
        item.put("notReached", statistics.notReached());
        item.put("p", statistics.share());
        item.put("wilson", statistics.share(), share -> statistics.interval().orElseThrow());
        item.put("pointBiserial", statistics.pointBiserial());
        item.put("correctedR", statistics.correctedR());
        item.put("discrimination", statistics.discrimination());
        item.put("alphaIfDeleted", statistics.reliabilityWithout());
        item.put(
                "flags",
                ItemFlag.of(statistics, false).stream().map(ItemFlag::id).toList());
        return item.toMap();
    }

    /**
     * How the file was read.
     *
     * @param header whether its first line was taken for headings
     * @param idColumn the heading of the column that was taken for names, null if none was
     * @param blankRows how many rows have no answer
     */
    record LayoutJson(boolean header, @Nullable String idColumn, long blankRows) {}

    /**
     * How many people have a score.
     *
     * @param score the score
     * @param people how many
     * @param lordSem the standard error of it
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record ScoreJson(int score, long people, @Nullable Double lordSem) {

        static ScoreJson of(int score, Scores scores) {
            return new ScoreJson(
                    score,
                    scores.at(score),
                    Reliability.lordStandardError(score, scores.items()).value());
        }
    }
}
