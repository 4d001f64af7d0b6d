package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The check of pages itself: it must find what it is there for. */
@NeedsChromium
class PageCheckBrowserTest {

    private static final String SOUND = "<html lang=en><title>t</title><main><h1>t</h1>";

    @TempDir
    private static Path folder = Path.of("");

    private static Chrome chrome;

    @BeforeAll
    static void start() {
        chrome = Chrome.start(folder, "data:text/html,", Chrome.Scripts.ON, "page-check");
    }

    @AfterAll
    static void stop() {
        chrome.close();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "<p style=width:400px>wide | pixels of 360",
                "<p style=color:silver>pale | color-contrast",
                "<input> | label",
                "<script>console.error('loud')</script> | loud"
            })
    void findsTheFault(String fault, String finding) {
        chrome.go(SOUND);
        AssertionError found = assertThrows(AssertionError.class, () -> chrome.go(SOUND + fault));
        assertTrue(String.valueOf(found.getMessage()).contains(finding), found.getMessage());
    }
}
