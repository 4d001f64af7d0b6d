package beltmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.db.Database;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class VerifyCommandTest {

    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

    @TempDir
    Path folder;

    private final RecordBook book = new RecordBook(Clock.fixed(NOON, ZoneOffset.UTC));
    private String printed = "";

    record Note(String text) {}

    private String append(int from, int to) {
        try (Database database = Database.open(folder)) {
            for (int number = from; number <= to; number++) {
                Entry entry = new Entry("test.note", "operation-" + number, 1, 1, NOON, new Note("note " + number));
                database.write(handle -> book.append(handle, entry)).join();
            }
            return database.read(book::head).toWord();
        }
    }

    private int verify(String... more) {
        StringWriter out = new StringWriter();
        CommandLine command = new CommandLine(new VerifyCommand()).setOut(new PrintWriter(out));
        String[] arguments = new String[2 + more.length];
        arguments[0] = "--data";
        arguments[1] = folder.toString();
        System.arraycopy(more, 0, arguments, 2, more.length);
        int code = command.execute(arguments);
        printed = out.toString();
        return code;
    }

    private void tamper(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("beltmark.db"));
                Statement statement = connection.createStatement()) {
            for (String change : statements) {
                statement.execute(change);
            }
        }
    }

    @Test
    void unchangedBookGivesNoughtWithCountAndHead() {
        String head = append(1, 3);
        assertEquals(0, verify());
        assertTrue(printed.contains("All 3 records are as they were written."), printed);
        assertTrue(printed.contains("head " + head), printed);
    }

    @Test
    void changedRecordGivesOneAndItsNumber() throws SQLException {
        append(1, 3);
        tamper(
                "DROP TRIGGER recordbook_entry_no_update",
                "UPDATE recordbook_entry SET body = '{\"text\":\"other\"}' WHERE seq = 2");
        assertEquals(1, verify());
        assertTrue(
                printed.contains("Record 2 is not as it was written. What it says does not give its hash."), printed);
        assertTrue(printed.contains("trigger recordbook_entry_no_update is missing"), printed);
    }

    @Test
    void bookThatGrewSinceTheHeadWasNotedIsUnchanged() {
        String head = append(1, 3);
        append(4, 5);
        assertEquals(0, verify("--head", head));
    }

    @Test
    void shortenedBookIsFoundByAnEarlierHead() throws SQLException {
        String head = append(1, 3);
        String trigger = "CREATE TRIGGER recordbook_entry_no_delete BEFORE DELETE ON recordbook_entry\n"
                + "BEGIN\n    SELECT RAISE(ABORT, 'records are never deleted');\nEND";
        tamper("DROP TRIGGER recordbook_entry_no_delete", "DELETE FROM recordbook_entry WHERE seq = 3", trigger);
        assertEquals(0, verify());
        assertEquals(1, verify("--head", head));
    }

    @Test
    void headThatIsNoneGivesOne() {
        append(1, 3);
        assertEquals(1, verify("--head", "3:abc"));
        assertEquals(1, verify("--head", ""));
    }

    @Test
    void folderWithoutDatabaseGivesTwo() {
        assertEquals(2, verify());
        assertTrue(printed.contains("There is no database"), printed);
    }

    @Test
    void fileThatIsNoDatabaseGivesOne() throws IOException {
        append(1, 3);
        Files.writeString(folder.resolve("beltmark.db"), "no database at all ".repeat(1000));
        assertEquals(1, verify());
    }

    @Test
    void worksWhileAServerIsRunning() {
        append(1, 3);
        try (Database running = Database.open(folder)) {
            assertEquals(0, verify());
            assertEquals(3, running.read(book::head).sequence());
        }
    }
}
