package beltmark.review;

import java.time.Instant;
import java.util.List;

/**
 * Everything the review page shows, as of one moment.
 *
 * @param now that moment
 * @param scope what it takes in
 * @param crews the crews to choose from
 * @param standings where each person stands
 * @param counts how often each question was missed
 * @param misses how each question was missed, for each question the most frequent first
 * @param critical the critical questions missed by each person
 */
record Overview(
        Instant now,
        Scope scope,
        List<CrewName> crews,
        List<Standing> standings,
        List<QuestionCount> counts,
        List<MissCount> misses,
        List<CriticalMiss> critical) {}
