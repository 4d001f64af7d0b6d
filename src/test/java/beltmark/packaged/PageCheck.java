package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;

/**
 * What every page must keep to: nothing sticks out sideways on a small phone or a desk screen, axe-core finds nothing
 * serious against WCAG 2.2 level AA, and the browser has nothing to complain of, such as a breach of the content policy.
 */
final class PageCheck {

    private static final int PHONE_PIXELS = 360;
    private static final int DESK_PIXELS = 1280;
    private static final int HEIGHT_PIXELS = 740;

    private static final List<String> RULES =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa");
    private static final Set<String> GRAVE = Set.of("serious", "critical");

    /** The browser also reports that the page itself came as "asked again" or "not there", which is meant. */
    private static final Pattern MEANT = Pattern.compile("status of (404|409|422)");

    private static final Pattern CUT = Pattern.compile("net::ERR_|status of (401|403)");

    private final ChromeDriver driver;
    private final Path screens;
    private final boolean scripts;
    private boolean networkCut;
    private int pages;

    /**
     * @param driver the browser
     * @param screens the folder for pictures of the pages
     * @param scripts whether scripts run, without which axe-core cannot look
     */
    PageCheck(ChromeDriver driver, Path screens, boolean scripts) {
        this.driver = driver;
        this.screens = screens;
        this.scripts = scripts;
    }

    /** Inspects the page shown. */
    void page() {
        fits(DESK_PIXELS);
        fits(PHONE_PIXELS);
        keepPicture();
        if (scripts) {
            assertEquals(List.of(), graveFindings(), () -> "axe-core on " + address());
        }
        assertEquals(List.of(), complaints(), () -> "the browser on " + address());
    }

    /** From now on the network is cut at times, which the browser complains of, and rightly. */
    void expectNetworkFaults() {
        networkCut = true;
    }

    /** The element with the focus must be seen to have it. */
    void focusShows() {
        assertEquals(
                true,
                driver.executeScript("""
                const focused = document.activeElement;
                const style = getComputedStyle(focused);
                return focused === document.body || style.outlineStyle !== 'none' || style.boxShadow !== 'none';"""),
                () -> "no sign of the focus on "
                        + driver.switchTo().activeElement().getDomProperty("outerHTML"));
    }

    /** {@return the address of the page shown} */
    String address() {
        return Objects.requireNonNull(driver.getCurrentUrl());
    }

    private void fits(int width) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", HEIGHT_PIXELS, "deviceScaleFactor", 1, "mobile", false));
        Number needed = (Number) driver.executeScript("return document.documentElement.scrollWidth");
        assertTrue(
                needed != null && needed.intValue() <= width,
                () -> address() + " needs " + needed + " pixels of " + width);
    }

    private List<String> graveFindings() {
        List<Rule> violations = new AxeBuilder().withTags(RULES).analyze(driver).getViolations();
        return violations.stream()
                .filter(rule -> GRAVE.contains(rule.getImpact()))
                .map(rule -> rule.getId() + " " + rule.getNodes())
                .toList();
    }

    private List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
                .map(LogEntry::getMessage)
                .filter(message -> !(message.startsWith(address() + " ")
                        && MEANT.matcher(message).find()))
                .filter(message -> !(networkCut && CUT.matcher(message).find()))
                .toList();
    }

    private void keepPicture() {
        try {
            Files.createDirectories(screens);
            String name = String.format(
                    "%02d%s.png",
                    ++pages,
                    address()
                            .replaceFirst("^http://[^/]*", "")
                            .replaceAll("[^A-Za-z0-9]+", "-")
                            .replaceFirst("(?<=^.{60}).*", ""));
            Object picture = driver.executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true))
                    .get("data");
            Files.write(screens.resolve(name), Base64.getDecoder().decode(String.valueOf(picture)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
