package beltmark.recordbook;

import beltmark.db.Database;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** A book of a few records, and a way to its file that goes round our code. */
final class SampleBook {

    static final Instant START = Instant.parse("2026-03-02T06:00:00Z");

    static final RecordBook BOOK = new RecordBook(Clock.fixed(START, ZoneOffset.UTC));

    private SampleBook() {}

    /** The body of the sample records. */
    record Answer(String text, long tries) {}

    static Entry entry(int number) {
        return new Entry(
                "practice.answer",
                "operation-" + number,
                100 + number,
                100 + number,
                START.minusSeconds(number),
                new Answer("4 3/4 in ± " + number, number));
    }

    /** Fills a new database with as many records, stored a second apart. */
    static void write(Path folder, int count) {
        try (Database database = Database.open(folder)) {
            database.write(handle -> {
                        for (int number = 1; number <= count; number++) {
                            Clock clock = Clock.offset(Clock.fixed(START, ZoneOffset.UTC), Duration.ofSeconds(number));
                            new RecordBook(clock).append(handle, entry(number));
                        }
                        return count;
                    })
                    .join();
        }
    }

    static Verification verify(Path folder) {
        return Database.inspect(folder, BOOK::verify);
    }

    static Connection connect(Path folder) throws SQLException {
        return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("beltmark.db"));
    }

    /** Takes the triggers away, does what they would refuse, and puts them back. */
    static void tamper(Path folder, String... statements) throws SQLException {
        try (Connection connection = connect(folder);
                Statement statement = connection.createStatement()) {
            List<String> triggers = column(statement, "SELECT sql FROM sqlite_schema WHERE type = 'trigger'");
            for (String name : column(statement, "SELECT name FROM sqlite_schema WHERE type = 'trigger'")) {
                statement.execute("DROP TRIGGER " + name);
            }
            for (String change : statements) {
                statement.execute(change);
            }
            for (String trigger : triggers) {
                statement.execute(trigger);
            }
        }
    }

    static List<String> column(Statement statement, String query) throws SQLException {
        List<String> values = new ArrayList<>();
        try (var row = statement.executeQuery(query)) {
            while (row.next()) {
                values.add(row.getString(1));
            }
        }
        return values;
    }
}
