package beltmark.qualification;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import beltmark.MovingClock;
import beltmark.core.qualification.CleanNeed;
import beltmark.core.qualification.EventKind;
import beltmark.core.qualification.Scope;
import beltmark.db.Database;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written down, with which number, day and time. */
class FactBookTest {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 5);

    private final MovingClock clock = new MovingClock();
    private final RecordBook book = new RecordBook(clock);
    private final FactBook facts = new FactBook();
    private final Database database;
    private int operations;

    FactBookTest(@TempDir Path folder) {
        this.database = Database.open(folder);
    }

    private record Body(String what) {}

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void aFactIsKnownWhenItsRecordWasStored() {
        long record = record(7);
        write(handle -> facts.add(handle, record, NewFact.quizPassed(7, "lockout", DAY.minusDays(3))));
        assertEquals(
                List.of(Map.of(
                        "kind",
                        "quiz-passed",
                        "person_id",
                        7,
                        "happened_on",
                        "2026-03-02",
                        "known_at_ms",
                        clock.millis())),
                ask("SELECT kind, person_id, happened_on, known_at_ms FROM qualification_fact"));
    }

    @Test
    void oneRecordMayCarrySeveralFacts() {
        long record = record(7);
        write(handle -> {
            facts.add(handle, record, NewFact.event(EventKind.INSPECTION_FAILED, Scope.procedure("bora"), DAY));
            facts.add(handle, record, NewFact.hold(Scope.person(7), DAY));
        });
        assertEquals(
                List.of(Map.of("number", 1, "scope", "procedure"), Map.of("number", 2, "scope", "person")),
                ask("SELECT number, scope FROM qualification_fact ORDER BY number"));
    }

    @Test
    void onlyTheFirstCleanProblemsOfAFamilyAreKept() {
        for (int i = 0; i < CleanNeed.MOST + 3; i++) {
            long record = record(7);
            write(handle -> facts.clean(handle, record, 7, "bench", DAY));
        }
        assertEquals(
                List.of(Map.of("count(*)", CleanNeed.MOST, "max(nth)", CleanNeed.MOST)),
                ask("SELECT count(*), max(nth) FROM qualification_fact"));
    }

    @Test
    void aDemonstrationIsActivityOfBothPeople() {
        long record = record(7);
        write(handle -> facts.add(handle, record, NewFact.demonstration(7, "narrow-belt-rig", 8, DAY)));
        assertEquals(
                List.of(Map.of("person_id", 7), Map.of("person_id", 8)),
                ask("SELECT person_id FROM qualification_activity ORDER BY person_id"));
    }

    @Test
    void activityKnowsTheGapBeforeItAndWhetherItWasToldLate() {
        active(7, DAY);
        active(7, DAY);
        active(7, DAY.plusDays(40));
        active(7, DAY.plusDays(10));
        assertEquals(
                List.of(
                        Map.of("day", "2026-03-05", "gap_days", 0, "late", 0),
                        Map.of("day", "2026-03-15", "gap_days", 10, "late", 1),
                        Map.of("day", "2026-04-14", "gap_days", 40, "late", 0)),
                ask("SELECT day, gap_days, late FROM qualification_activity ORDER BY day"));
    }

    @Test
    void withoutARecordThereIsNoFact() {
        assertThrows(
                CompletionException.class,
                () -> write(handle -> facts.add(handle, 99, NewFact.paperPassed(7, "set-up", DAY))));
    }

    @Test
    void aLongAbsenceIsNeverWrittenDown() {
        assertThrows(IllegalArgumentException.class, () -> NewFact.event(EventKind.LONG_ABSENCE, Scope.all(), DAY));
    }

    @Test
    void factsAreNeverChanged() {
        long record = record(7);
        write(handle -> facts.add(handle, record, NewFact.quizPassed(7, "lockout", DAY)));
        for (String change : List.of(
                "UPDATE qualification_fact SET subject = 'x'",
                "DELETE FROM qualification_fact",
                "INSERT OR REPLACE INTO qualification_fact SELECT * FROM qualification_fact",
                "UPDATE qualification_activity SET gap_days = 1",
                "DELETE FROM qualification_activity",
                "INSERT OR REPLACE INTO qualification_activity SELECT * FROM qualification_activity")) {
            assertThrows(
                    CompletionException.class,
                    () -> database.write(handle -> handle.execute(change)).join(),
                    change);
        }
    }

    private void active(long person, LocalDate on) {
        long record = record(person);
        write(handle -> facts.active(handle, record, person, on));
    }

    private long record(long person) {
        String operation = "test-" + operations++;
        return database.write(handle -> book.append(
                        handle, new Entry("test.record", operation, person, person, clock.instant(), new Body("test"))))
                .join()
                .sequence();
    }

    private void write(Consumer<Handle> change) {
        database.write((Function<Handle, Boolean>) handle -> {
                    change.accept(handle);
                    return true;
                })
                .join();
    }

    private List<Map<String, Object>> ask(String query) {
        return database.read(handle -> handle.createQuery(query).mapToMap().list());
    }
}
