package beltmark.review.first;

import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Quiz;
import beltmark.core.statistics.ItemFlag;
import beltmark.core.statistics.ItemStatistics;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Reliability;
import beltmark.core.statistics.ResponseCounts;
import beltmark.core.statistics.Scores;
import beltmark.core.statistics.Undefined;
import beltmark.review.first.FirstAttempts.MissCount;
import beltmark.review.first.FirstAttempts.QuestionCount;
import beltmark.review.first.FirstAttempts.ScoreCount;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Works the findings out of the totals. */
public final class Findings {

    private static final int WHOLE = 100;

    private final FirstAttempts attempts;
    private final Quiz quiz;
    private final int usualLength;

    /**
     * @param attempts the totals
     * @param quiz the quiz they are of, with the key of its questions
     */
    public Findings(FirstAttempts attempts, Quiz quiz) {
        this.attempts = attempts;
        this.quiz = quiz;
        usualLength = attempts.scores().stream()
                .collect(Collectors.groupingBy(ScoreCount::asked, Collectors.summingLong(ScoreCount::people)))
                .entrySet()
                .stream()
                .max(Map.Entry.<Integer, Long>comparingByValue().thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    /** {@return the findings on the test; nothing if too few people sat it} */
    public Optional<TestFindings> test() {
        if (attempts.isHeldBack()) {
            return Optional.empty();
        }
        long[] people = new long[usualLength + 1];
        attempts.scores().stream()
                .filter(count -> count.asked() == usualLength)
                .forEach(count -> people[count.score()] += count.people());
        Scores scores = Scores.of(people);
        ResponseCounts counts = counts(asked());
        boolean same = asked().size() == usualLength
                && asked().values().stream().allMatch(item -> counts.hits(item).trials() == scores.people());
        Measure consistency = same ? Reliability.kr20(counts) : Reliability.kr21(scores);
        return Optional.of(new TestFindings(needed(), scores, same, consistency));
    }

    private int needed() {
        return (usualLength * quiz.passPercent() + WHOLE - 1) / WHOLE;
    }

    /** {@return the findings on each question that was asked, the most missed first} */
    public List<QuestionFindings> questions() {
        Map<String, Integer> asked = asked();
        ResponseCounts counts = counts(asked);
        Map<String, Proportion> right = right();
        Map<String, List<MissCount>> misses =
                attempts.misses().stream().collect(Collectors.groupingBy(MissCount::question));
        return right.entrySet().stream()
                .sorted(Comparator.comparingDouble((Map.Entry<String, Proportion> entry) ->
                                entry.getValue().share().orElse(1.0))
                        .thenComparing(entry -> -entry.getValue().trials())
                        .thenComparing(Map.Entry::getKey))
                .map(entry -> finding(
                        entry.getKey(),
                        entry.getValue(),
                        misses.getOrDefault(entry.getKey(), List.of()),
                        Optional.ofNullable(asked.get(entry.getKey())).map(item -> ItemStatistics.of(counts, item))))
                .toList();
    }

    private QuestionFindings finding(
            String question, Proportion right, List<MissCount> misses, Optional<ItemStatistics> item) {
        boolean told = attempts.mayTell(question, right.trials());
        Set<ItemFlag> flags = item.filter(any -> told)
                .map(statistics -> ItemFlag.of(statistics, anotherOptionLeads(question, right, misses)))
                .orElse(Set.of());
        return new QuestionFindings(
                question,
                right,
                told,
                misses.stream().findFirst(),
                item.map(statistics -> statistics.hits().trials()).orElse(0L),
                item.map(ItemStatistics::correctedR).orElse(Measure.undefined(Undefined.NOBODY)),
                flags);
    }

    /** Where one of several options is chosen, whether another one was chosen by more people than the key. */
    private boolean anotherOptionLeads(String question, Proportion right, List<MissCount> misses) {
        return isChoice(question) && misses.stream().anyMatch(miss -> miss.people() > right.hits());
    }

    /** A question of an earlier version may be in the quiz no more. */
    private boolean isChoice(String question) {
        return quiz.questions().stream()
                .filter(one -> one.id().equals(question))
                .map(Question::kind)
                .anyMatch(kind -> kind == QuestionKind.CHOICE);
    }

    private Map<String, Proportion> right() {
        return attempts.questions().stream()
                .collect(Collectors.toMap(
                        QuestionCount::question,
                        QuestionCount::hits,
                        (one, other) -> new Proportion(one.hits() + other.hits(), one.trials() + other.trials())));
    }

    /** The questions of papers of the usual length, numbered. */
    private Map<String, Integer> asked() {
        Map<String, Integer> numbers = new TreeMap<>();
        attempts.questions().stream()
                .filter(count -> count.asked() == usualLength)
                .forEach(count -> numbers.putIfAbsent(count.question(), numbers.size()));
        return numbers;
    }

    /** The scores go from 0 to the length of a paper, which is less than the number of questions where these are drawn. */
    private ResponseCounts counts(Map<String, Integer> asked) {
        ResponseCounts counts = new ResponseCounts(Math.max(1, Math.max(usualLength, asked.size())));
        attempts.scores().stream()
                .filter(count -> count.asked() == usualLength)
                .forEach(count -> counts.addPeople(count.score(), count.people()));
        attempts.questions().stream()
                .filter(count -> count.asked() == usualLength)
                .forEach(count -> counts.addItem(asked.getOrDefault(count.question(), 0), count.score(), count.hits()));
        return counts;
    }
}
