package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import plumbleaf.web.page.Room;

/**
 * What the browser itself counts as layout shifts (Layout Instability, W3C draft community group report; 0.1 a page is held good there) while a value is changed in
 * each room, by number and by hand, those within half a second of a key counted too. Nothing moves but the number that changed, under which its old value stands for a
 * moment; the field that is typed in stays where it is.
 */
class NothingJumpsTest extends InBrowser {
    /** Of the screen, all shifts of an edit together. */
    private static final double HARDLY = 0.005;

    /** Another order of the packet is another order of its pages, and is meant to be seen. */
    private static final double MEANT = 0.1;

    @ParameterizedTest
    @CsvSource({
        "GROUND, ground.shots[1].rod, 5' 2",
        "LINE, runs[0].infill, 5' 11",
        "GATES, gates[0].opening, 4' 1/2",
        "STRENGTH, site.wind.speed, 106",
        "STOCK, builds.R1.depth, 34",
        "MONEY, money.margin, 19",
        "PAPERS, packet[proposal], 1"
    })
    void anEditShiftsOnlyTheNumberThatChanged(Room room, String path, String value) {
        for (boolean small : List.of(false, true)) {
            job = store.open(demo.put()).orElseThrow();
            if (small) phone();
            go(room);
            browser.executeScript("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", field(path));
            field(path).sendKeys(Keys.chord(Keys.CONTROL, "a"));
            settle();
            watch();
            double before = top(path);
            field(path).sendKeys(value, Keys.ENTER);
            waitForVersion(2);
            settle();
            double most = room == Room.PAPERS ? MEANT : HARDLY;
            assertThat(shifted()).as(shifts().toString()).isLessThanOrEqualTo(most);
            if (room == Room.PAPERS) continue;
            assertThat(top(path)).isBetween(before - 1, before + 1);
            assertThat(strangers()).as("small " + small).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"GROUND, P3, 8, 0", "LINE, G1, 8, 0", "GATES, G1a.m5, 0, -6", "MONEY, profit.share, 12, 0"})
    void whatIsDrawnByHandShiftsNothingElseWhileItMoves(Room room, String of, int right, int down) {
        go(room);
        browser.executeScript("arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})", slider(of));
        settle();
        watch();
        drag(of, right, down);
        waitForVersion(2);
        settle();
        assertThat(shifted()).as(shifts().toString()).isLessThanOrEqualTo(HARDLY);
    }

    /** That the browser counts at all. */
    @Test
    void aPageThatJumpsIsSeenToJump() {
        go(Room.MONEY);
        settle();
        watch();
        browser.executeScript("document.getElementById('numbers').style.paddingTop = '80px'");
        settle();
        assertThat(shifted()).isGreaterThan(HARDLY);
        assertThat(strangers()).isNotEmpty();
    }

    private void watch() {
        // When the old value goes again, what stands beside it moves: that is after what is looked at here.
        hold();
        browser.executeScript("""
                window.shifts = [];
                const named = (node) => (node.nodeType === 1 ? node : node.parentElement)?.closest('.changed') ? 'changed'
                    : node.nodeName + ' ' + (node.className?.baseVal ?? node.className ?? '') + ' ' + node.textContent.trim().slice(0, 40);
                new PerformanceObserver((list) => {
                    for (const entry of list.getEntries()) window.shifts.push({ by: entry.value,
                        what: entry.sources.filter((one) => one.node).map((one) => named(one.node)) });
                }).observe({ type: 'layout-shift' });
                """);
    }

    /** Two frames and a little, so that what was laid out is counted. */
    private void settle() {
        browser.executeAsyncScript(
                "const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 300)))");
    }

    private double shifted() {
        Object sum = browser.executeScript("return window.shifts.reduce((sum, one) => sum + one.by, 0)");
        return sum instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    private List<?> shifts() {
        return (List<?>) Objects.requireNonNull(browser.executeScript("return window.shifts"));
    }

    /** What shifted though it is no number that changed. */
    private List<String> strangers() {
        List<String> strangers = new ArrayList<>();
        for (Object shift : shifts())
            if (shift instanceof Map<?, ?> one && one.get("what") instanceof List<?> what)
                for (Object name : what) if (!name.equals("changed")) strangers.add(String.valueOf(name));
        return strangers;
    }

    private double top(String path) {
        Object top = browser.executeScript("return arguments[0].getBoundingClientRect().top", field(path));
        return top instanceof Number number ? number.doubleValue() : Double.NaN;
    }
}
