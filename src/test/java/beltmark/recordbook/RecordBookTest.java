package beltmark.recordbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.units.Length;
import beltmark.db.Database;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.CompletionException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordBookTest {

    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00.250Z");

    private final RecordBook book = new RecordBook(Clock.fixed(NOON, ZoneOffset.UTC));

    @TempDir
    Path folder;

    private Database database;

    record Reading(
            Length left,
            Length right,
            Instant at,
            LocalDate day,
            List<String> slips,
            double forceNewtons,
            @Nullable String note) {

        boolean isEven() {
            return left.equals(right);
        }
    }

    @BeforeEach
    void open() {
        database = Database.open(folder);
    }

    @AfterEach
    void close() {
        database.close();
    }

    private static Reading reading() {
        return new Reading(
                Length.ofInches(4.75),
                Length.ofMillimetres(-3),
                NOON,
                LocalDate.of(2026, 3, 2),
                List.of("¾ misread"),
                0.1,
                null);
    }

    private static Entry entry(String operation) {
        return new Entry("practice.answer", operation, 7, 7, NOON.minusSeconds(5), reading());
    }

    private Recorded append(Entry entry) {
        return database.write(handle -> book.append(handle, entry)).join();
    }

    private StoredEntry get(long sequence) {
        return database.read(handle -> book.find(handle, sequence)).orElseThrow();
    }

    @Test
    void numbersRecordsFromOneOn() {
        assertEquals(new Recorded(1, true), append(entry("a")));
        assertEquals(new Recorded(2, true), append(entry("b")));
    }

    @Test
    void sameOperationIsRecordedOnce() {
        append(entry("a"));
        append(entry("b"));
        assertEquals(new Recorded(1, false), append(entry("a")));
        assertEquals(2, database.read(book::head).sequence());
    }

    @Test
    void operationOfAnotherPersonIsRefused() {
        append(entry("a"));
        Entry other = new Entry("practice.answer", "a", 8, 8, NOON, reading());
        CompletionException refused = assertThrows(CompletionException.class, () -> append(other));
        assertInstanceOf(OperationTaken.class, refused.getCause());
    }

    @Test
    void bodyComesBackAsItWent() {
        append(entry("a"));
        assertEquals(reading(), get(1).bodyAs(Reading.class));
    }

    @Test
    void bodyIsCanonicalJson() {
        append(entry("a"));
        assertEquals("""
                {"at":"2026-03-02T12:00:00.250Z","day":"2026-03-02","forceNewtons":0.1,"left":{"nm":120650000},\
                "note":null,"right":{"nm":-3000000},"slips":["¾ misread"]}""", get(1).body());
    }

    @Test
    void keepsBothTimesAndBothPersons() {
        append(new Entry("signoff.demonstration", "a", 7, 9, NOON.minus(Duration.ofDays(2)), reading()));
        StoredEntry stored = get(1);
        assertEquals(NOON.minus(Duration.ofDays(2)), stored.happenedAt());
        assertEquals(NOON, stored.recordedAt());
        assertEquals(7, stored.subject());
        assertEquals(9, stored.actor());
    }

    @Test
    void clockSetBackNeverPutsARecordBeforeAnEarlierOne() {
        append(entry("a"));
        RecordBook early = new RecordBook(Clock.fixed(NOON.minus(Duration.ofDays(30)), ZoneOffset.UTC));
        database.write(handle -> early.append(handle, entry("b"))).join();
        assertEquals(NOON, get(2).recordedAt());
        assertTrue(database.read(book::verify).isUnchanged());
    }

    @Test
    void refusesABodyThatIsNotARecord() {
        assertThrows(IllegalArgumentException.class, () -> new Entry("practice.answer", "a", 7, 7, NOON, "text"));
    }

    @Test
    void refusesABodyWithoutFiniteNumbers() {
        Reading reading = new Reading(Length.ZERO, Length.ZERO, NOON, LocalDate.EPOCH, List.of(), Double.NaN, null);
        Entry entry = new Entry("practice.answer", "a", 7, 7, NOON, reading);
        assertThrows(CompletionException.class, () -> append(entry));
        assertEquals(0, database.read(book::head).sequence());
    }

    @Test
    void emptyBookIsUnchanged() {
        Verification verification = database.read(book::verify);
        assertEquals(List.of(), verification.schemaDifferences());
        assertTrue(verification.isUnchanged());
        assertFalse(reading().isEven());
    }
}
