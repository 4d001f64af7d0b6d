package beltmark.recordbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.db.Database;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was acknowledged is still there after the process is killed at any moment. */
class KillTest {

    private static final int KILLS = 5;
    private static final int ACKNOWLEDGED_BEFORE_A_KILL = 150;

    @TempDir
    Path folder;

    private final Map<Long, String> acknowledged = new TreeMap<>();

    @Test
    void everyAcknowledgedRecordSurvivesKilling() throws IOException {
        for (int kill = 1; kill <= KILLS; kill++) {
            runAndKill(kill * 1_000_000, ACKNOWLEDGED_BEFORE_A_KILL + 7 * kill);
            assertTrue(SampleBook.verify(folder).isUnchanged());
            Map<Long, String> stored = stored();
            acknowledged.forEach((sequence, operation) -> assertEquals(operation, stored.get(sequence)));
        }
        assertTrue(acknowledged.size() > KILLS * ACKNOWLEDGED_BEFORE_A_KILL);
    }

    private void runAndKill(int firstOperation, int lines) throws IOException {
        Process process = start(firstOperation);
        try (BufferedReader out = process.inputReader(StandardCharsets.UTF_8)) {
            for (int line = 0; line < lines; line++) {
                note(String.valueOf(out.readLine()));
            }
            // by its handle: the process itself would close the stream, and what it had said by then counts as well
            process.toHandle().destroyForcibly();
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                note(line);
            }
        }
        assertEquals(128 + 9, process.onExit().join().exitValue());
    }

    private Process start(int firstOperation) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(
                List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(AppendUntilKilled.class.getName(), folder.toString(), Integer.toString(firstOperation)));
        return new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private void note(String line) {
        String[] words = line.split(" ", -1);
        // the kill may have cut the last line
        if (words.length == 4 && words[0].equals("stored")) {
            acknowledged.put(Long.parseLong(words[1]), words[2]);
        }
    }

    private Map<Long, String> stored() {
        return Database.inspect(folder, handle -> {
            Map<Long, String> stored = new TreeMap<>();
            handle.createQuery("SELECT seq, operation FROM recordbook_entry")
                    .map((row, context) -> Map.entry(row.getLong(1), row.getString(2)))
                    .forEach(entry -> stored.put(entry.getKey(), entry.getValue()));
            return stored;
        });
    }
}
