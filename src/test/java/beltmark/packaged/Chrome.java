package beltmark.packaged;

import java.io.File;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real Chromium without a window, as wide as a small phone. Every page it comes to is inspected by {@link PageCheck}. */
final class Chrome implements AutoCloseable {

    /** Whether pages may run scripts. */
    enum Scripts {
        ON,
        OFF
    }

    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final int MOST_TABS = 80;

    private final ChromeDriver driver;
    private final String site;
    private final PageCheck check;
    private String first = "";

    private Chrome(ChromeDriver driver, String site, PageCheck check) {
        this.driver = driver;
        this.site = site;
        this.check = check;
    }

    /**
     * {@return a browser without cookies}
     *
     * @param folder where it may keep its profile
     * @param site the address of the server
     * @param scripts whether pages may run scripts
     * @param screens name of the folder below {@code target/screens} for a picture of every page
     */
    static Chrome start(Path folder, String site, Scripts scripts, String screens) {
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(onPath("chromedriver").toFile())
                .usingAnyFreePort()
                .withLogOutput(OutputStream.nullOutputStream())
                .build();
        ChromeDriver driver = new ChromeDriver(service, options(folder.resolve("profile"), scripts));
        return new Chrome(
                driver, site, new PageCheck(driver, Path.of("target", "screens", screens), scripts == Scripts.ON));
    }

    private static ChromeOptions options(Path profile, Scripts scripts) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(
                onPath("chromium", "chromium-browser", "google-chrome").toFile());
        options.addArguments(
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-quic",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--user-data-dir=" + profile);
        options.setCapability("goog:loggingPrefs", Map.of("browser", "ALL"));
        if (scripts == Scripts.OFF) {
            options.setExperimentalOption("prefs", Map.of("profile.managed_default_content_settings.javascript", 2));
        }
        return options;
    }

    private static Path onPath(String... names) {
        return Stream.of(names)
                .flatMap(name -> Stream.of(System.getenv("PATH").split(File.pathSeparator))
                        .map(folder -> Path.of(folder, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("not on the PATH: " + String.join(", ", names)));
    }

    /** From now on the network is cut at times. */
    void expectNetworkFaults() {
        check.expectNetworkFaults();
    }

    /** Presses a button that leads to no other page. */
    void pressInPlace(String selector) {
        find(selector).click();
    }

    /** {@return what stands in a field} */
    String value(String name) {
        return Objects.toString(find("[name='" + name + "']").getDomProperty("value"), "");
    }

    /** Unfolds what is folded, and inspects the page as it then is. */
    void unfold(String selector) {
        pressInPlace(selector + " > summary");
        check.page();
    }

    /** Opens a second tab and turns to it; {@link #turnBack} leads to the first. */
    void openTab() {
        first = driver.getWindowHandle();
        driver.switchTo().newWindow(WindowType.TAB);
    }

    /** Turns back to the tab from before {@link #openTab}. */
    void turnBack() {
        driver.switchTo().window(first);
    }

    /** Goes to a path of the site by the address line. */
    void go(String path) {
        driver.get(site + path);
        check.page();
    }

    /** Drops the cookies, as a restart of a private window does. */
    void forgetWhoIsSignedIn() {
        driver.manage().deleteAllCookies();
    }

    /** {@return the path of the page shown} */
    String path() {
        return check.address().substring(site.length()).replaceFirst("[?#].*", "");
    }

    /** {@return what can be read on the page} */
    String text() {
        return driver.findElement(By.tagName("body")).getText();
    }

    /** {@return whether a page of this browser gets its scripts run} */
    boolean runsScripts() {
        driver.get("data:text/html,<title>off</title><script>document.title = 'on'</script>");
        return "on".equals(driver.getTitle());
    }

    /** {@return the source of the page shown} */
    String source() {
        return Objects.requireNonNull(driver.getPageSource());
    }

    /** {@return the first element of a CSS selector, as soon as it is there} */
    WebElement find(String selector) {
        return new WebDriverWait(driver, PATIENCE).until(now -> now.findElement(By.cssSelector(selector)));
    }

    /** {@return whether the page has an element of a CSS selector} */
    boolean has(String selector) {
        return !driver.findElements(By.cssSelector(selector)).isEmpty();
    }

    /** Waits until the page shows this. */
    void waitFor(String shown) {
        new WebDriverWait(driver, PATIENCE).until(now -> text().contains(shown));
    }

    /** Follows the first link or button that shows this, to the page behind it. */
    void press(String shown) {
        String having = "//main//*[self::a or self::button][contains(normalize-space(.), \"" + shown + "\")]";
        pressOn(driver.findElement(By.xpath(having)));
    }

    /** Follows the first link of the table row that shows this. */
    void pressInRow(String shown) {
        pressOn(driver.findElement(By.xpath("//main//tr[contains(., \"" + shown + "\")]//a")));
    }

    /** Follows the first link or button of a CSS selector, to the page behind it. */
    void pressOn(String selector) {
        pressOn(find(selector));
    }

    private void pressOn(WebElement element) {
        arriveAfter(element::click);
    }

    /** Does something that leads to another page, waits for that and inspects it. */
    void arriveAfter(Runnable step) {
        Object before = pageBirth();
        step.run();
        new WebDriverWait(driver, PATIENCE)
                // while one page gives way to the next there is nothing to ask
                .ignoring(WebDriverException.class)
                .until(now -> !before.equals(pageBirth())
                        && "complete".equals(driver.executeScript("return document.readyState")));
        check.page();
    }

    private Object pageBirth() {
        Object birth = driver.executeScript("return performance.timeOrigin");
        return birth == null ? "no page" : birth;
    }

    /** Fills in a field by its name: types over what stands there, picks from a list, or marks a choice. */
    void fill(String name, String value) {
        WebElement field = find("[name='" + name + "']");
        if (field.getTagName().equals("select")) {
            new Select(field).selectByValue(value);
        } else if (List.of("radio", "checkbox").contains(String.valueOf(field.getDomAttribute("type")))) {
            WebElement choice = find("[name='" + name + "'][value='" + value + "']");
            if (!choice.isSelected()) {
                choice.click();
            }
        } else {
            field.clear();
            field.sendKeys(value);
        }
    }

    /** Fills in fields: name, value, name, value. */
    void fillAll(String... namesAndValues) {
        for (int i = 0; i < namesAndValues.length; i += 2) {
            fill(namesAndValues[i], namesAndValues[i + 1]);
        }
    }

    /** Types on the keyboard, wherever the focus is. */
    void type(CharSequence... keys) {
        new Actions(driver).sendKeys(keys).perform();
    }

    /** Moves the focus with the tab key until it is on the element of a selector; each one on the way must show it. */
    void tabTo(String selector) {
        for (int tabs = 0; tabs < MOST_TABS; tabs++) {
            type(Keys.TAB);
            check.focusShows();
            if (driver.switchTo().activeElement().equals(find(selector))) {
                return;
            }
        }
        throw new AssertionError("the tab key never reaches " + selector + " on " + path());
    }

    @Override
    public void close() {
        driver.quit();
    }
}
