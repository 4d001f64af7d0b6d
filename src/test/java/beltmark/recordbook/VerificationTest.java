package beltmark.recordbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.db.Schema;
import beltmark.recordbook.Verification.Fault;
import beltmark.recordbook.Verification.Reason;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whoever can write the file can get past the triggers; the walk must still find it. */
class VerificationTest {

    private static final int RECORDS = 9;

    @TempDir
    Path folder;

    @BeforeEach
    void write() {
        SampleBook.write(folder, RECORDS);
    }

    private void tamper(String... statements) throws SQLException {
        SampleBook.tamper(folder, statements);
    }

    private void execute(String statement) throws SQLException {
        try (Connection connection = SampleBook.connect(folder);
                Statement prepared = connection.createStatement()) {
            prepared.execute(statement);
        }
    }

    private Fault foundFault() {
        Verification verification = SampleBook.verify(folder);
        assertEquals(List.of(), verification.schemaDifferences());
        assertFalse(verification.isUnchanged());
        return verification.fault().orElseThrow();
    }

    @Test
    void untouchedBookIsUnchanged() throws SQLException {
        tamper();
        Verification verification = SampleBook.verify(folder);
        assertTrue(verification.isUnchanged());
        assertEquals(RECORDS, verification.head().sequence());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "body = replace(body, '4 3/4', '4 1/4')",
                "body = body || ' '",
                "kind = 'practice.answerx'",
                "operation = 'another'",
                "subject = subject + 1",
                "actor = actor + 1",
                "happened_at_ms = happened_at_ms - 1",
                "recorded_at_ms = recorded_at_ms + 1",
                "hash = randomblob(32)"
            })
    void changedColumnIsFound(String change) throws SQLException {
        tamper("UPDATE recordbook_entry SET " + change + " WHERE seq = 4");
        assertEquals(new Fault(4, Reason.WRONG_HASH), foundFault());
    }

    @Test
    void changedFormatIsFound() throws SQLException {
        tamper("UPDATE recordbook_entry SET format = 2 WHERE seq = 4");
        assertEquals(new Fault(4, Reason.UNKNOWN_FORMAT), foundFault());
    }

    @Test
    void changedLinkIsFound() throws SQLException {
        tamper("UPDATE recordbook_entry SET previous_hash = randomblob(32) WHERE seq = 4");
        assertEquals(new Fault(4, Reason.WRONG_LINK), foundFault());
    }

    @Test
    void swappedRecordsAreFound() throws SQLException {
        tamper(
                "UPDATE recordbook_entry SET seq = 1000 WHERE seq = 4",
                "UPDATE recordbook_entry SET seq = 4 WHERE seq = 5",
                "UPDATE recordbook_entry SET seq = 5 WHERE seq = 1000");
        assertEquals(new Fault(4, Reason.WRONG_LINK), foundFault());
    }

    @Test
    void removedRecordIsFound() throws SQLException {
        tamper("DELETE FROM recordbook_entry WHERE seq = 4");
        assertEquals(new Fault(5, Reason.GAP), foundFault());
    }

    @Test
    void removedRecordIsFoundWhenTheRestMovesUp() throws SQLException {
        tamper("DELETE FROM recordbook_entry WHERE seq = 4", "UPDATE recordbook_entry SET seq = seq - 1 WHERE seq > 4");
        assertEquals(new Fault(4, Reason.WRONG_LINK), foundFault());
    }

    @Test
    void removedFirstRecordIsFound() throws SQLException {
        tamper("DELETE FROM recordbook_entry WHERE seq = 1");
        assertEquals(new Fault(2, Reason.GAP), foundFault());
    }

    @Test
    void recordThatIsNoLongerARecordIsFound() throws SQLException {
        tamper(
                "PRAGMA ignore_check_constraints = ON",
                "UPDATE recordbook_entry SET previous_hash = zeroblob(3) WHERE seq = 4");
        assertEquals(new Fault(4, Reason.UNREADABLE), foundFault());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "DROP TRIGGER recordbook_entry_no_update",
                "DROP TRIGGER recordbook_entry_no_delete",
                "DROP TRIGGER recordbook_entry_must_follow",
                "ALTER TABLE recordbook_entry ADD COLUMN note TEXT",
                "CREATE TRIGGER late AFTER INSERT ON recordbook_entry BEGIN SELECT 1; END",
                "CREATE INDEX late ON recordbook_entry (subject)"
            })
    void changedSchemaIsFound(String change) throws SQLException {
        execute(change);
        Verification verification = SampleBook.verify(folder);
        assertEquals(Optional.empty(), verification.fault());
        assertEquals(1, verification.schemaDifferences().size());
        assertFalse(verification.isUnchanged());
    }

    @Test
    void triggerWithAnotherTextIsFound() throws SQLException {
        execute("DROP TRIGGER recordbook_entry_no_delete");
        execute("CREATE TRIGGER recordbook_entry_no_delete BEFORE DELETE ON recordbook_entry BEGIN SELECT 1; END");
        assertEquals(
                List.of(new Schema.Difference("trigger recordbook_entry_no_delete", Schema.Change.ALTERED)),
                SampleBook.verify(folder).schemaDifferences());
    }
}
