package beltmark.recordbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.db.Database;
import beltmark.db.Integrity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.jdbi.v3.core.Handle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One bit anywhere in the file: either it is found, or every record still says what it said. */
class BitFlipTest {

    private static final int FLIPS = 150;
    private static final long SEED = 20260302;

    @TempDir
    Path folder;

    private final Random random = new Random(SEED);

    @Test
    void noFlippedBitChangesARecordUnseen() throws IOException {
        SampleBook.write(folder, 800);
        Path file = folder.resolve("beltmark.db");
        byte[] untouched = Files.readAllBytes(file);
        List<String> records = Database.inspect(folder, BitFlipTest::records);
        int found = 0;
        for (int flip = 0; flip < FLIPS; flip++) {
            int bit = random.nextInt(untouched.length * 8);
            Files.write(file, flipped(untouched, bit));
            if (isFound()) {
                found++;
            } else {
                assertEquals(records, Database.inspect(folder, BitFlipTest::records), "bit " + bit);
            }
            Files.write(file, untouched);
        }
        assertTrue(found > FLIPS / 3, found + " found");
    }

    private static byte[] flipped(byte[] bytes, int bit) {
        byte[] flipped = bytes.clone();
        flipped[bit / 8] ^= (byte) (1 << bit % 8);
        return flipped;
    }

    private boolean isFound() {
        try {
            return Database.inspect(
                    folder,
                    handle -> !SampleBook.BOOK.verify(handle).isUnchanged()
                            || !Integrity.faults(handle).isEmpty());
        } catch (RuntimeException unreadable) {
            return true;
        }
    }

    private static List<String> records(Handle handle) {
        return handle.createQuery("SELECT * FROM recordbook_entry ORDER BY seq")
                .mapToMap()
                .map(row ->
                        row.get("seq") + " " + row.get("kind") + " " + row.get("operation") + " " + row.get("subject")
                                + " " + row.get("actor") + " " + row.get("happened_at_ms") + " "
                                + row.get("recorded_at_ms") + " "
                                + row.get("body"))
                .list();
    }
}
