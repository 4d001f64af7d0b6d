package beltmark.review;

import beltmark.core.statistics.Proportion;
import beltmark.review.first.FirstAttempts;
import java.time.Instant;
import java.util.List;

/**
 * Everything the review page shows, as of one moment.
 *
 * @param now that moment
 * @param scope what it takes in
 * @param crews the crews to choose from
 * @param months the months to choose from
 * @param passed how many people have passed of how many there are
 * @param standings where each person of the page stands
 * @param attempts the totals over first attempts
 * @param critical the critical questions missed by each person, the latest first
 */
record Overview(
        Instant now,
        Scope scope,
        List<CrewName> crews,
        List<String> months,
        Proportion passed,
        List<Standing> standings,
        FirstAttempts attempts,
        List<CriticalMiss> critical) {}
