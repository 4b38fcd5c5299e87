package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.chrome.ChromeDriver;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import plumbleaf.web.Trial;
import plumbleaf.web.Workspace;
import plumbleaf.web.desk.DemoJob;
import plumbleaf.web.page.Room;
import plumbleaf.web.store.JobId;

/**
 * Every page against the rules of WCAG 2.2 A and AA that a program can check, by the axe-core engine, on paper and dark, wide and on a
 * phone. What no program can check (names that make sense, an order that does) is read by people.
 */
@Tag("browser")
@SpringBootTest(classes = Workspace.class, webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
class AccessibilityTest {
    private static final String RULES = "['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa']";

    @LocalServerPort
    private int port;

    @Autowired
    private DemoJob demo;

    private ChromeDriver browser;
    private JobId job;

    @DynamicPropertySource
    static void ownStore(DynamicPropertyRegistry properties) {
        properties.add("plumbleaf.store", Trial::store);
        properties.add("plumbleaf.mode", () -> "local");
    }

    @BeforeEach
    void open() {
        job = demo.put();
        browser = Chromium.open(1280, 900);
    }

    @AfterEach
    void close() {
        browser.quit();
    }

    @Test
    void noPageBreaksARuleOnPaperOrInTheDarkWideOrOnAPhone() throws IOException {
        String engine = engine();
        List<String> broken = new ArrayList<>();
        for (boolean phone : List.of(false, true)) {
            browser.executeCdpCommand(
                    "Emulation.setDeviceMetricsOverride",
                    Map.of("width", phone ? 390 : 1280, "height", 844, "deviceScaleFactor", 1, "mobile", phone));
            for (String look : List.of("light", "dark")) {
                for (String page : pages()) {
                    browser.get("http://127.0.0.1:" + port + page);
                    browser.executeScript("document.documentElement.dataset.theme = arguments[0]", look);
                    for (String fault : faults(engine))
                        broken.add(page + " (" + look + (phone ? ", phone" : "") + "): " + fault);
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    private List<String> pages() {
        List<String> pages = new ArrayList<>(List.of(
                "/",
                "/new",
                "/new/fence",
                "/calendar",
                "/yard",
                "/rates",
                "/books",
                "/trash",
                "/guide/rooms",
                "/guide?q=soil",
                "/?find=nothing"));
        for (Room room : Room.values()) pages.add("/jobs/" + job + "/" + room.key());
        pages.add("/jobs/" + job + "/history");
        pages.add("/jobs/" + job + "/files");
        pages.add("/jobs/" + job + "/customer");
        pages.add("/jobs/" + job + "/walk/3");
        pages.add("/jobs/" + job + "/walk/40");
        return pages;
    }

    private List<String> faults(String engine) {
        browser.executeScript(engine);
        Object found = browser.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: {type: 'tag', values: " + RULES + "}}).then(r => done("
                + "r.violations.map(v => v.id + ' at ' + v.nodes.slice(0, 3).map(n => n.target.join(' ') + ' '"
                + " + (n.any[0]?.message ?? n.all[0]?.message ?? '')).join('; '))))");
        List<String> faults = new ArrayList<>();
        for (Object fault : (List<?>) Objects.requireNonNull(found)) faults.add(String.valueOf(fault));
        return faults;
    }

    private static String engine() throws IOException {
        try (InputStream script = Objects.requireNonNull(
                AccessibilityTest.class.getResourceAsStream("/axe.min.js"), "axe.min.js is not on the class path")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
