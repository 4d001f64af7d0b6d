package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The script that the build calls before the browser tests, with only these programs on the PATH. */
class ChromiumScriptTest {

    @TempDir
    private Path folder = Path.of("");

    @ParameterizedTest
    @CsvSource({"chromium", "chromium-browser", "google-chrome"})
    void isContentWithABrowserAndItsDriver(String browser) throws IOException, InterruptedException {
        program(browser, "");
        program("chromedriver", "");
        assertEquals(0, run());
        assertEquals("", said());
    }

    @Test
    void saysInOneLineWhatToInstallOrLeaveOut() throws IOException, InterruptedException {
        program("chromium", "");
        assertEquals(1, run());
        assertEquals(1, said().lines().count(), said());
        assertTrue(said().contains("chromedriver") && said().contains("-DskipBrowserTests"));
    }

    @Test
    void installsBothAsRoot() throws IOException, InterruptedException {
        program("id", "echo 0");
        program("env", "shift; exec \"$@\"");
        program(
                "apt-get",
                "echo \"$@\" >> apt-calls; [ \"$1\" = update ] || { echo > chromium; echo > chromedriver; /bin/chmod 755 chrom*; }");
        assertEquals(0, run(), this::said);
        assertEquals(
                "update -q\ninstall -q -y chromium chromium-driver\n", Files.readString(folder.resolve("apt-calls")));
    }

    @Test
    void saysTheSameWhereItMayNotInstall() throws IOException, InterruptedException {
        program("id", "echo 1000");
        program("apt-get", "exit 0");
        program("sudo", "exit 1");
        assertEquals(1, run());
        assertTrue(said().contains("-DskipBrowserTests"));
    }

    private void program(String name, String script) throws IOException {
        Path file = Files.writeString(folder.resolve(name), "#!/bin/sh\n" + script + "\n");
        assertTrue(file.toFile().setExecutable(true));
    }

    private int run() throws IOException, InterruptedException {
        ProcessBuilder script = new ProcessBuilder(
                        "/bin/sh", Path.of(".ci", "chromium").toAbsolutePath().toString())
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile());
        script.environment().put("PATH", folder.toString());
        return script.start().waitFor();
    }

    private String said() {
        try {
            return Files.readString(folder.resolve("said"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
