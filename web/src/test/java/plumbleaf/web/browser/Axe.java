package plumbleaf.web.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.openqa.selenium.chrome.ChromeDriver;

/** What the axe-core engine finds against the rules of WCAG 2.2 A and AA that a program can check. */
final class Axe {
    private static final String RULES = "['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa']";

    private Axe() {}

    /** What is broken on these pages, on paper and dark, wide and on a phone; nothing may be wider than the screen either. */
    static List<String> faults(ChromeDriver browser, String server, List<String> pages) {
        String engine = engine();
        List<String> broken = new ArrayList<>();
        for (boolean phone : List.of(false, true)) {
            int wide = phone ? 390 : 1280;
            browser.executeCdpCommand(
                    "Emulation.setDeviceMetricsOverride",
                    Map.of("width", wide, "height", 844, "deviceScaleFactor", 1, "mobile", phone));
            for (String look : List.of("light", "dark")) {
                for (String page : pages) {
                    browser.get(server + page);
                    browser.executeScript("document.documentElement.dataset.theme = arguments[0]", look);
                    String where = page + " (" + look + (phone ? ", phone" : "") + "): ";
                    for (String fault : faults(browser, engine)) broken.add(where + fault);
                    Object over = browser.executeScript("return document.documentElement.scrollWidth - " + wide);
                    if (over instanceof Long pixels && pixels > 0) broken.add(where + "stands over by " + pixels);
                }
            }
        }
        return broken;
    }

    private static List<String> faults(ChromeDriver browser, String engine) {
        browser.executeScript(engine);
        Object found = browser.executeAsyncScript("const done = arguments[arguments.length - 1];"
                + "document.fonts.ready"
                + ".then(() => axe.run(document, {runOnly: {type: 'tag', values: " + RULES + "}})).then(r => done("
                + "r.violations.map(v => v.id + ' at ' + v.nodes.slice(0, 3).map(n => n.target.join(' ') + ' '"
                + " + (n.any[0]?.message ?? n.all[0]?.message ?? '')).join('; '))))");
        List<String> faults = new ArrayList<>();
        for (Object fault : (List<?>) Objects.requireNonNull(found)) faults.add(String.valueOf(fault));
        return faults;
    }

    private static String engine() {
        try (InputStream script = Objects.requireNonNull(
                Axe.class.getResourceAsStream("/axe.min.js"), "axe.min.js is not on the class path")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
