package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.solution.Slip;
import beltmark.core.units.Graduation;
import beltmark.core.units.LengthPrinter;
import beltmark.packaged.Jar.Ran;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server of the jar: killed, started again, started twice, started wrongly. */
class ServerJarTest {

    @TempDir
    private Path folder = Path.of("");

    @Test
    void anAnswerThatWasConfirmedOutlivesAKill() {
        Problem drill = Sample.family("mount-marks").problem(new ProblemCode("M1"));
        Slip slip = ((LengthBlank) drill.parts().get(0).blanks().get(0)).slips().get(0);
        String says = Sample.says("problem.slip.mount-mark." + slip.id());
        try (PackagedSite site = PackagedSite.start(folder)) {
            Reply reply = open(site)
                    .send("left", LengthPrinter.print(slip.value(), Graduation.SIXTEENTH_INCH), "right", "30");
            assertTrue(reply.text().contains(says), reply::text);
            site.kill();
        }
        try (PackagedSite site = PackagedSite.start(folder)) {
            assertTrue(open(site).text().contains(says));
        }
        assertEquals(0, Jar.run(folder, "", "verify", "--data", "data").exit());
    }

    @Test
    void aSecondServerOnTheSameDataOrPortIsRefusedInASentence() {
        try (PackagedSite site = PackagedSite.start(folder)) {
            assertTrue(refused("serve", "--port", "0", "--data", "data").contains("in use by another Beltmark server"));
            String port = Integer.toString(site.port());
            assertTrue(refused("serve", "--port", port, "--data", "other").contains("port " + port));
        }
    }

    @Test
    void anAddressThatCannotBeListenedOnIsRefusedInASentence() {
        assertTrue(refused("serve", "--port", "99999").contains("99999"));
        assertTrue(refused("serve", "--port", "0", "--host", "no such host").contains("no such host"));
        assertTrue(refused("serve", "--port", "0", "--host", "0.0.0.0").contains("--insecure-lan"));
    }

    private String refused(String... arguments) {
        Ran ran = Jar.run(folder, "", arguments);
        assertEquals(2, ran.exit(), ran::err);
        assertFalse(ran.err().contains("\tat "), ran::err);
        assertEquals("", ran.out());
        return ran.err();
    }

    private static Reply open(PackagedSite site) {
        Browser browser = site.signIn("Pier crew", SampleSite.NEW_HIRE);
        return browser.get("/practice/mount-marks/M1");
    }
}
