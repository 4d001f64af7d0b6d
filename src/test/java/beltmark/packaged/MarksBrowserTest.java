package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.SampleSite;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.units.Length;
import beltmark.core.units.LengthReader;
import beltmark.core.units.LengthUnit;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A height is given by a tap on the drawing. */
@NeedsChromium
class MarksBrowserTest {

    @TempDir
    private static Path folder = Path.of("");

    private static PackagedSite site;
    private static Chrome chrome;

    @BeforeAll
    static void start() {
        site = PackagedSite.start(folder);
        chrome = Chrome.start(folder, site.address(), Chrome.Scripts.ON, "marks");
        new Trainee(chrome).signIn("Pier crew", SampleSite.NEW_HIRE);
    }

    @AfterAll
    static void stop() {
        chrome.close();
        site.close();
    }

    @Test
    void aTapOnTheDrawingFillsTheField() {
        chrome.go("/practice/belt-mark-cup/T1");
        chrome.pressInPlace(".part-open svg[data-axis-zero]");
        String left = chrome.value("left");
        String right = chrome.value("right");
        String typed = left.isEmpty() ? right : left;
        Length marked = LengthReader.read(typed, LengthUnit.INCH).getLength();
        Problem problem = Sample.family("belt-mark-cup").problem(new ProblemCode("T1"));
        LengthBlank blank = (LengthBlank) problem.parts().get(0).blanks().get(0);
        assertTrue(marked.isWithin(Length.ofMillimetres(150), blank.rightLength()), typed);
    }
}
