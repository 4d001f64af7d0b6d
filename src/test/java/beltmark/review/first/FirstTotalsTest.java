package beltmark.review.first;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import beltmark.SampleSite;
import beltmark.lockout.QuizTaker;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class FirstTotalsTest {

    private static final List<String> TABLES =
            List.of("lockout_first_score", "lockout_first_question", "lockout_first_miss");

    @SuppressWarnings("NullAway.Init")
    private SampleSite site;

    @BeforeEach
    void start() {
        site = SampleSite.start();
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of("shift-change", "isolating-devices"));
        QuizTaker.sitAll(site.signIn(SampleSite.NEW_HIRE), Set.of("stop-button"));
        site.clock().move(Duration.ofDays(40));
        QuizTaker.sitAll(site.signIn(SampleSite.OTHER_SUPERVISOR), Set.of("shift-change"));
    }

    @AfterEach
    void stop() {
        site.close();
    }

    @Test
    void countsTheFirstSittingOfEachPersonByCrewAndMonth() {
        FirstAttempts all = totals(0, Period.EVER);

        assertEquals(2, all.passed().trials());
        assertEquals(
                1,
                totals(site.crewId(SampleSite.NEW_HIRE), Period.EVER).passed().trials());
        assertEquals(1, totals(0, new Period("2026-04", "")).passed().trials());
        assertEquals(
                List.of("2026-03", "2026-04"), site.database().read(h -> new FirstTotals().listMonths(h, "lockout")));
        assertFalse(all.misses().stream().anyMatch(miss -> miss.question().equals("stop-button")));
    }

    private FirstAttempts totals(long crew, Period period) {
        return site.database().read(handle -> new FirstTotals().of(handle, "lockout", crew, period));
    }

    /** What was recorded before the tables were there is counted when they are made, to the same totals. */
    @Test
    void theMigrationCountsWhatWasRecordedBefore() throws IOException {
        List<List<Map<String, Object>>> kept = rows();

        List<String> counting = statements()
                .dropWhile(one -> !one.contains("CREATE TEMP TABLE"))
                .toList();
        site.database()
                .write(handle -> {
                    TABLES.forEach(table -> handle.execute("DELETE FROM " + table));
                    counting.forEach(handle::execute);
                    return counting.size();
                })
                .join();

        assertEquals(kept, rows());
    }

    private static Stream<String> statements() throws IOException {
        try (InputStream file =
                Objects.requireNonNull(FirstTotalsTest.class.getResourceAsStream("/db/V017__first.sql"))) {
            return Arrays.stream(new String(file.readAllBytes(), StandardCharsets.UTF_8).split(";\n", -1))
                    .filter(statement -> !statement.isBlank());
        }
    }

    private List<List<Map<String, Object>>> rows() {
        return site.database()
                .read(handle -> TABLES.stream()
                        .map(table -> handle.createQuery("SELECT * FROM " + table + " ORDER BY 1, 2, 3, 4, 5, 6")
                                .mapToMap()
                                .list())
                        .toList());
    }
}
