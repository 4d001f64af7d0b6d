package beltmark.packaged;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The packaged jar, run as its users run it: from any folder, in a process of its own. */
final class Jar {

    private static final long PATIENCE_SECONDS = 120;

    private Jar() {}

    /**
     * What a command came to.
     *
     * @param exit the exit code
     * @param out what it printed
     * @param err what it complained of
     */
    record Ran(int exit, String out, String err) {}

    /** {@return a process that is to run the jar in a folder, not yet started} */
    static ProcessBuilder process(Path folder, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                // short runs: the quick compiler and collector start sooner on few cores
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-jar",
                Path.of(System.getProperty("beltmark.jar", "target/beltmark.jar"))
                        .toAbsolutePath()
                        .toString()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).directory(folder.toFile());
    }

    /** {@return what comes of a command that reads this and ends by itself} */
    static Ran run(Path folder, String input, String... arguments) {
        try {
            Path in = Files.writeString(Files.createTempFile(folder, "in", ".txt"), input);
            Path out = Files.createTempFile(folder, "out", ".txt");
            Path err = Files.createTempFile(folder, "err", ".txt");
            Process process = process(folder, arguments)
                    .redirectInput(in.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IllegalStateException("still running: " + String.join(" ", arguments));
            }
            return new Ran(process.exitValue(), text(out), text(err));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }
}
