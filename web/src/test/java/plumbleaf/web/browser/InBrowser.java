package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import plumbleaf.web.Trial;
import plumbleaf.web.Workspace;
import plumbleaf.web.desk.DemoJob;
import plumbleaf.web.page.Room;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** One person at the example job, in a real browser that may not complain of anything. */
@Tag("browser")
@SpringBootTest(classes = Workspace.class, webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
abstract class InBrowser {
    static final Duration PATIENCE = Duration.ofMinutes(1);

    @LocalServerPort
    int port;

    @Autowired
    JobStore store;

    @Autowired
    DemoJob demo;

    ChromeDriver browser;
    StoredJob job;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    @BeforeEach
    void open() {
        job = store.open(demo.put()).orElseThrow();
        browser = Chromium.open(1280, 900);
    }

    @AfterEach
    void close() {
        List<String> complaints = browser.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(entry -> entry.getLevel() + " " + entry.getMessage())
                .filter(line -> !line.contains("409 ()") && !line.contains("422 ()"))
                .filter(line -> !line.contains("ERR_INTERNET_DISCONNECTED"))
                // What a test machine without a graphics card says of itself, not of the page.
                .filter(line -> !line.contains("GL Driver Message"))
                .toList();
        browser.quit();
        assertThat(complaints).isEmpty();
    }

    void go(Room room) {
        go("/jobs/" + job.id() + "/" + room.key());
    }

    /** There once the page has its letters and has fitted itself to its screen: at the first look the server may have guessed another breadth. */
    void go(String path) {
        browser.get("http://127.0.0.1:" + port + path);
        waitUntil("document.body.offsetHeight >= 0 && document.fonts.status === 'loaded' && "
                + "(breadth => !breadth || breadth === (matchMedia('screen and (max-width: 820px)').matches ? 'narrow' : 'wide'))"
                + "(document.getElementById('inside')?.dataset.breadth)");
    }

    /** Presses what leads to another page, and waits for that page: a press returns before the page it leads to is asked for. */
    void follow(WebElement link) {
        follow(browser, link);
    }

    void follow(String selector) {
        follow(css(selector));
    }

    static void follow(ChromeDriver browser, WebElement link) {
        browser.executeScript(
                "arguments[0].scrollIntoView({block: 'center', behavior: 'instant'}); document.pressed = true", link);
        link.click();
        waitUntil(browser, "document.pressed === undefined && document.readyState === 'complete'");
    }

    /** Presses what is answered on this page, wherever on it that stands. */
    void press(WebElement button) {
        browser.executeScript("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", button);
        button.click();
    }

    void phone() {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 390, "height", 844, "deviceScaleFactor", 2, "mobile", true));
    }

    void connection(boolean there) {
        browser.executeCdpCommand("Network.enable", Map.of());
        browser.executeCdpCommand(
                "Network.emulateNetworkConditions",
                Map.of("offline", !there, "latency", 0, "downloadThroughput", -1, "uploadThroughput", -1));
    }

    WebElement css(String selector) {
        return browser.findElement(By.cssSelector(selector));
    }

    WebElement field(String path) {
        return browser.findElement(
                By.xpath("//form[input[@name='path' and @value=\"" + path + "\"]]//*[@name='value']"));
    }

    void type(String path, String value) {
        field(path).sendKeys(Keys.chord(Keys.CONTROL, "a"), value, Keys.TAB);
    }

    String value(String path) {
        return Objects.requireNonNull(field(path).getAttribute("value"));
    }

    void waitForVersion(int version) {
        waitUntil("Number(document.getElementById('inside')?.dataset.version) === " + version);
    }

    void waitUntil(String condition, Object... arguments) {
        waitUntil(browser, condition, arguments);
    }

    private static void waitUntil(ChromeDriver browser, String condition, Object... arguments) {
        new WebDriverWait(browser, PATIENCE)
                .withMessage(condition)
                // A page that is being left answers no script.
                .ignoring(JavascriptException.class)
                .until(page -> Boolean.TRUE.equals(browser.executeScript("return " + condition, arguments)));
    }

    void touch(String of, int right, int down) {
        browser.executeScript("""
                const part = document.querySelector(`.sheet [data-of="${arguments[0]}"][role=slider]`);
                part.scrollIntoView({block: 'center', inline: 'center', behavior: 'instant'});
                const box = part.getBoundingClientRect();
                const at = (type, share) => part.dispatchEvent(new PointerEvent(type, { pointerId: 1, pointerType: 'touch', isPrimary: true,
                    button: type === 'pointermove' ? -1 : 0, bubbles: true, cancelable: true,
                    clientX: box.x + 5 + arguments[1] * share, clientY: box.y + 5 + arguments[2] * share }));
                part.setPointerCapture = () => {};
                at('pointerdown', 0);
                at('pointermove', 0.5);
                at('pointermove', 1);
                at('pointerup', 1);
                """, of, right, down);
    }

    /** What the page shows for some seconds only stays from now on, so that a slow machine comes to it in time too, until {@link #pass}. */
    void hold() {
        browser.executeScript(
                "window.passing = []; window.asItGoes = setTimeout;"
                        + "window.setTimeout = (then, ms, ...more) => ms < 4000 ? asItGoes(then, ms, ...more) : passing.push(then) && 0");
    }

    void pass() {
        browser.executeScript("window.setTimeout = asItGoes; for (const then of passing.splice(0)) then()");
    }

    /** Presses keys that are one change together: none comes so late that the page keeps what came before it by itself, however slow the machine. */
    void quickly(WebElement part, CharSequence... keys) {
        browser.executeScript("window.asItIs = setTimeout;"
                + "window.setTimeout = (then, ms, ...more) => asItIs(then, 1000 * ms, ...more)");
        for (int i = 0; i < keys.length - 1; i++) part.sendKeys(keys[i]);
        browser.executeScript("window.setTimeout = asItIs");
        part.sendKeys(keys[keys.length - 1]);
    }

    WebElement slider(String of) {
        return css(".sheet [data-of='" + of + "'][role=slider]");
    }

    void drag(String of, int right, int down) {
        new Actions(browser)
                .clickAndHold(slider(of))
                .moveByOffset(right / 2, down / 2)
                .moveByOffset(right - right / 2, down - down / 2)
                .release()
                .perform();
    }

    /** So many real inches of a drawing on the screen. */
    int pixels(String of, double inches) {
        Object many = browser.executeScript("""
                const svg = document.querySelector(`.sheet [data-of="${arguments[0]}"][role=slider]`).closest('svg');
                const [left, , right] = svg.dataset.frame.split(' ').map(Number);
                return Math.round(arguments[1] * svg.getBoundingClientRect().width / (right - left))""", of, inches);
        return many instanceof Number number ? number.intValue() : 0;
    }

    String line() {
        return css("#line").getText();
    }

    String text() {
        return store.open(job.id()).orElseThrow().document();
    }
}
