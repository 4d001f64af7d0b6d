package beltmark.review.first;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Quiz;
import beltmark.core.lockout.Source;
import beltmark.core.statistics.ItemFlag;
import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Reliability;
import beltmark.core.statistics.Response;
import beltmark.core.statistics.ResponseCounts;
import beltmark.review.first.FirstAttempts.MissCount;
import beltmark.review.first.FirstAttempts.QuestionCount;
import beltmark.review.first.FirstAttempts.ScoreCount;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** People who answer by their ability, seeded; the statistics themselves are checked in {@code beltmark.analysis}. */
class FindingsTest {

    private static final int QUESTIONS = 10;
    private static final Quiz QUIZ = new Quiz(
            "lockout",
            1,
            80,
            IntStream.range(0, 2 * QUESTIONS).mapToObj(FindingsTest::question).toList());

    private static Question question(int number) {
        return new Question(
                "q" + number,
                QuestionKind.CHOICE,
                false,
                List.of("a", "b", "c"),
                List.of("a"),
                new Source(List.of("Q074"), "29 CFR 1910.147(d)", List.of("osha-gi")));
    }

    @Test
    void whereAllHadTheSameQuestionsTheConsistencyIsAlpha() {
        Papers papers = new Papers();
        papers.sit(40, false, 7);
        TestFindings test = findings(papers, Map.of()).test().orElseThrow();

        assertTrue(test.sameQuestions());
        assertEquals(Reliability.kr20(papers.counts), test.consistency());
        assertTrue(test.interval().isPresent());
        assertEquals(8, test.needed());
    }

    @Test
    void whereQuestionsAreDrawnItIsKr21() {
        Papers papers = new Papers();
        papers.sit(40, true, 7);
        TestFindings test = findings(papers, Map.of()).test().orElseThrow();

        assertFalse(test.sameQuestions());
        assertEquals(Reliability.kr21(test.scores()), test.consistency());
        assertEquals(QUESTIONS, test.scores().items());
        assertTrue(test.interval().isEmpty());
    }

    @Test
    void aMiskeyedQuestionIsFlagged() {
        Papers papers = new Papers();
        papers.miskeyed = 4;
        papers.sit(60, false, 7);

        QuestionFindings found = find(findings(papers, Map.of()), "q4");

        assertEquals(Set.of(ItemFlag.SUSPECT_KEY), found.flags());
        assertEquals("b", found.mostMissed().orElseThrow().option());
        assertTrue(found.correlationInterval().orElseThrow().low() < 0);
    }

    @Test
    void ofFewerThanTenPeopleOnlyCountsAreTold() {
        Papers papers = new Papers();
        papers.sit(9, false, 7);
        Findings findings = findings(papers, Map.of());

        assertTrue(findings.test().isEmpty());
        assertTrue(findings.questions().stream()
                .allMatch(question -> question.interval().isEmpty()));
        assertEquals(QUESTIONS, findings.questions().size());
    }

    @Test
    void ofFewerThanThirtyPeopleNoCorrelationIsTold() {
        Papers papers = new Papers();
        papers.sit(29, false, 7);
        Findings findings = findings(papers, Map.of());

        assertFalse(findings.test().orElseThrow().isLargeEnough());
        assertTrue(findings.questions().stream().allMatch(one -> one.interval().isPresent()));
        assertTrue(findings.questions().stream().noneMatch(QuestionFindings::hasCorrelation));
    }

    /** The crew has 40, all crews had the question 45 times: the 5 of the others would follow. */
    @Test
    void aQuestionWhoseComplementIsSmallIsHeldBack() {
        Papers papers = new Papers();
        papers.sit(40, false, 7);
        Findings findings = findings(papers, Map.of("q3", 45L, "q4", 50L));

        assertTrue(find(findings, "q3").interval().isEmpty());
        assertTrue(find(findings, "q4").interval().isPresent());
    }

    @Test
    void theMostMissedQuestionIsFirst() {
        Papers papers = new Papers();
        papers.sit(40, false, 7);
        List<Double> shares = findings(papers, Map.of()).questions().stream()
                .map(question -> question.right().share().orElseThrow())
                .toList();

        assertEquals(shares.stream().sorted().toList(), shares);
    }

    private static Findings findings(Papers papers, Map<String, Long> everywhere) {
        return new Findings(
                new FirstAttempts(
                        3,
                        papers.scores,
                        papers.questions,
                        papers.misses(),
                        Map.of(3L, (long) papers.people),
                        everywhere),
                QUIZ);
    }

    private static QuestionFindings find(Findings findings, String question) {
        return findings.questions().stream()
                .filter(one -> one.question().equals(question))
                .findFirst()
                .orElseThrow();
    }

    /** Papers that were sat, and what is kept of them. */
    private static final class Papers {

        private final List<ScoreCount> scores = new ArrayList<>();
        private final List<QuestionCount> questions = new ArrayList<>();
        private final int[] missed = new int[2 * QUESTIONS];
        private final ResponseCounts counts = new ResponseCounts(QUESTIONS);
        private int people;
        private int miskeyed = -1;

        void sit(int sitters, boolean drawn, long seed) {
            Random random = new Random(seed);
            for (people = 0; people < sitters; people++) {
                double ability = random.nextGaussian();
                int from = drawn ? random.nextInt(QUESTIONS) : 0;
                record(
                        from,
                        IntStream.range(0, QUESTIONS)
                                .mapToObj(i -> answer(from + i, random.nextGaussian() + i / 4.0 - 1.5 < ability))
                                .toList());
            }
        }

        private Response answer(int question, boolean knows) {
            return knows == (question != miskeyed) ? Response.RIGHT : Response.WRONG;
        }

        private void record(int from, List<Response> answers) {
            int score = Collections.frequency(answers, Response.RIGHT);
            counts.add(answers);
            scores.add(new ScoreCount(QUESTIONS, score, 1, score >= 8 ? 1 : 0));
            for (int i = 0; i < QUESTIONS; i++) {
                int hits = answers.get(i) == Response.RIGHT ? 1 : 0;
                missed[from + i] += 1 - hits;
                questions.add(new QuestionCount("q" + (from + i), QUESTIONS, score, new Proportion(hits, 1)));
            }
        }

        List<MissCount> misses() {
            return IntStream.range(0, missed.length)
                    .filter(i -> missed[i] > 0)
                    .mapToObj(i -> new MissCount("q" + i, "chosen", "b", missed[i]))
                    .toList();
        }
    }
}
