package beltmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.certificate.SampleCertificate;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class VerifyCertificateCommandTest {

    @TempDir
    Path folder;

    private String printed = "";

    private int verify(String code, Path key) {
        StringWriter out = new StringWriter();
        CommandLine command = new CommandLine(new VerifyCertificateCommand()).setOut(new PrintWriter(out));
        int exit = command.execute(code, "--key", key.toString());
        printed = out.toString();
        return exit;
    }

    private Path key() throws IOException {
        return Files.writeString(folder.resolve("key.pem"), SampleCertificate.pem());
    }

    @Test
    void aCodeAsItWasSignedGivesNoughtAndWhatItSays() throws IOException {
        assertEquals(0, verify("https://belts.example/verify/" + SampleCertificate.token(), key()));
        assertTrue(printed.contains("Ana Beltrán, wide-belt-rig, from 2026-03-05 to 2027-03-04"), printed);
        assertTrue(printed.contains("no leave to start work"), printed);
    }

    @Test
    void aChangedCodeGivesOne() throws IOException {
        assertEquals(1, verify(SampleCertificate.token() + "A", key()));
        assertTrue(printed.contains("counts for nothing"), printed);
    }

    @Test
    void aMissingKeyGivesTwo() {
        assertEquals(2, verify(SampleCertificate.token(), folder.resolve("none.pem")));
    }
}
