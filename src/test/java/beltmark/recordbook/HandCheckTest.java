package beltmark.recordbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Follows the chain from the description of its format alone, as a stranger with a copy of the file would. */
class HandCheckTest {

    private static final String[] TEXT_FIELDS = {
        "format", "seq", "kind", "operation", "subject", "actor", "happened_at_ms", "recorded_at_ms", "body"
    };

    @TempDir
    Path folder;

    @Test
    void everyHashFollowsFromTheRowAndTheHashBefore() throws SQLException, IOException, NoSuchAlgorithmException {
        SampleBook.write(folder, 50);
        byte[] previous = new byte[32];
        int count = 0;
        try (Connection connection = SampleBook.connect(folder);
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("SELECT * FROM recordbook_entry ORDER BY seq")) {
            while (row.next()) {
                count++;
                assertEquals(count, row.getInt("seq"));
                previous = hash(row, previous);
                assertArrayEquals(previous, row.getBytes("hash"));
            }
        }
        assertEquals(50, count);
    }

    private static byte[] hash(ResultSet row, byte[] previous)
            throws SQLException, IOException, NoSuchAlgorithmException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeByte(0);
        for (String field : TEXT_FIELDS) {
            byte[] text = row.getString(field).getBytes(StandardCharsets.UTF_8);
            out.writeInt(text.length);
            out.write(text);
        }
        out.writeInt(previous.length);
        out.write(previous);
        return MessageDigest.getInstance("SHA-256").digest(bytes.toByteArray());
    }

    /** Computed with Python 3.11: hashlib.sha256 over struct.pack('>I', len(f)) + f for the ten fields, after b'\0'. */
    @Test
    void hashOfAKnownRecordIsThatOfAnotherProgram() {
        Envelope envelope = new Envelope(
                1,
                1,
                "practice.answer",
                "5f2c",
                7,
                -7,
                Instant.parse("2026-03-02T12:00:00.250Z"),
                Instant.parse("2026-03-02T12:00:01Z"),
                "{\"left\":{\"nm\":120650000},\"note\":\"4¾\"}",
                Hash.NONE);
        assertEquals(
                "8580cead0af6353167e2116e81092b9e664accc1f600b0504da7322085baa6d9",
                envelope.hash().hex());
    }
}
