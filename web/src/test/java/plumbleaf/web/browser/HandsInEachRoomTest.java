package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import plumbleaf.web.page.Room;

/** Where the drawing is the input beside ground, line and gates: holes, bars, shares of the price, the packet. By hand, by key, by number. */
class HandsInEachRoomTest extends InBrowser {
    @Test
    void theHolesOfARunAreDrawnDeeperUnderStrength() {
        go(Room.STRENGTH);
        String before = css("tr[data-of=P3]").getText();
        drag("F3.depth", 0, pixels("F3.depth", 12));
        waitForVersion(2);
        assertThat(text()).contains("\"R1\": { \"post\": \"F1083-REG-2\", \"hole\": \"10\\\"\", \"depth\": \"4'\"");
        assertThat(css("tr[data-of=P3]").getText()).isNotEqualTo(before).contains("4' 0\"");
        css("[data-key=undo]").click();
        waitForVersion(3);
        assertThat(css("tr[data-of=P3]").getText()).isEqualTo(before);
    }

    @Test
    void theFootingsOfAGateAreDugDeeperByKeyAndByNumberUnderStrength() {
        go(Room.STRENGTH);
        slider("F5.depth").sendKeys(Keys.ARROW_DOWN);
        waitForVersion(2);
        assertThat(value("builds.G1.depth")).isEqualTo("3' 6\"");
        type("builds.G1.depth", "1270mm");
        waitForVersion(3);
        assertThat(text()).contains("\"depth\": \"1270mm\"");
    }

    @Test
    void aPostMovedInTheStockRoomAnswersInTheOrder() {
        go(Room.STOCK);
        String before = css("#numbers").getText();
        quickly(slider("P10"), Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT), Keys.chord(Keys.SHIFT, Keys.ARROW_RIGHT));
        waitForVersion(2);
        assertThat(text()).contains("\"length\": \"58'\"");
        assertThat(css("#numbers").getText()).isNotEqualTo(before);
        type("builds.R1.depth", "50.5in");
        waitForVersion(3);
        assertThat(text()).contains("\"depth\": \"50.5in\"");
    }

    @Test
    void aRailDraggedOnTheLeafIsCutAnewInTheBars() {
        go(Room.STOCK);
        String before = bars();
        Actions hand = new Actions(browser);
        hand.moveToElement(slider("G1a.m5"))
                .clickAndHold()
                .moveByOffset(0, -15)
                .moveByOffset(0, -15)
                .perform();
        waitUntil(
                "[...document.querySelectorAll('.sheets > figure')].filter(one => one.dataset.key.startsWith('Cut plan'))"
                        + ".map(one => one.textContent).join() !== arguments[0]",
                before);
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(1);
        hand.release().perform();
        waitForVersion(2);
        assertThat(bars()).isNotEqualTo(before);
    }

    @Test
    void theMarginIsDrawnOutOnTheWaterfallByHandByKeyAndByNumber() {
        go(Room.MONEY);
        String before = css("[data-number='money.total']").getText();
        Actions hand = new Actions(browser);
        hand.moveToElement(slider("profit.share"))
                .clickAndHold()
                .moveByOffset(12, 0)
                .moveByOffset(12, 0)
                .perform();
        waitUntil(
                "!document.querySelector(\"[data-number='money.total']\").textContent.endsWith(arguments[0])", before);
        assertThat(css(".moving:not(:empty)").getText()).matches("Margin, of price: \\d+(\\.5)?%");
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(1);
        hand.release().perform();
        waitForVersion(2);
        assertThat(text()).containsPattern("\"margin\": \"(19|2\\d)(\\.5)?%\"");
        type("money.margin", "18");
        waitForVersion(3);
        quickly(slider("profit.share"), Keys.ARROW_LEFT, Keys.ARROW_LEFT);
        waitForVersion(4);
        assertThat(value("money.margin")).isEqualTo("17%");
        slider("overhead.share").sendKeys(Keys.ARROW_RIGHT);
        waitForVersion(5);
        assertThat(value("money.overhead")).isEqualTo("12.5%");
    }

    @Test
    void aPaperIsDrawnToAnotherPlaceOfThePacketByHandByKeyAndByNumber() {
        go(Room.PAPERS);
        String first = place(1);
        drag("packet.site-plan.place", 0, pixels("packet.site-plan.place", 0.27 * 2.2));
        waitForVersion(2);
        assertThat(value("packet[site-plan]")).isEqualTo("3");
        assertThat(place(1)).isNotEqualTo(first);
        quickly(slider("packet.site-plan.place"), Keys.ARROW_UP, Keys.ARROW_UP);
        waitForVersion(3);
        assertThat(text()).doesNotContain("packet");
        type("packet[proposal]", "1");
        waitForVersion(4);
        assertThat(text()).contains("\"packet\": [\"proposal\", \"site-plan\"");
        field("packet[calculations]").sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.BACK_SPACE, Keys.TAB);
        waitForVersion(5);
        assertThat(text()).doesNotContain("calculations");
        assertThat(browser.findElements(By.linkText("calculations.pdf"))).hasSize(1);
        type("packet[proposal]", "first");
        waitUntil("document.querySelector('form.refused .problem')?.textContent.startsWith('This is no place')");
        assertThat(value("packet[proposal]")).isEqualTo("first");
    }

    @Test
    void aFingerTakesHoldOfHolesSharesAndPapersOnAPhone() {
        phone();
        go(Room.STRENGTH);
        waitUntil("document.getElementById('inside').dataset.breadth === 'narrow'");
        touch("F3.depth", 0, 20);
        waitForVersion(2);
        go(Room.MONEY);
        touch("profit.share", 20, 0);
        waitForVersion(3);
        assertThat(text()).doesNotContain("\"margin\": \"18%\"");
        go(Room.PAPERS);
        touch("packet.site-plan.place", 0, 50);
        waitForVersion(4);
        assertThat(text()).contains("\"packet\": [\"profile\"");
    }

    /** A real finger, which a browser would take for one that scrolls: down on the bottom of a hole, deeper a little at a time, and up. */
    @Test
    void aFingerThatDrawsAHoleDeeperLeavesThePageWhereItIs() {
        phone();
        browser.executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", true));
        go(Room.STRENGTH);
        waitUntil("document.getElementById('inside').dataset.breadth === 'narrow'");
        WebElement bottom = slider("F3.depth");
        browser.executeScript("arguments[0].scrollIntoView({ block: 'center', behavior: 'instant' })", bottom);
        // Down the page a little, so that it could go either way.
        browser.executeScript("scrollTo({ top: scrollY || 40, behavior: 'instant' })");
        double right = at(bottom, "(box.left + box.right) / 2");
        double down = at(bottom, "(box.top + box.bottom) / 2");
        double scrolled = number("scrollY");
        finger("touchStart", Map.of("x", right, "y", down));
        for (int i = 1; i <= 30; i++) finger("touchMove", Map.of("x", right, "y", down + i));
        assertThat(number("scrollY")).isEqualTo(scrolled);
        assertThat(css(".moving:not(:empty)").getText()).startsWith("Holes of run R1, at P3: ");
        browser.executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
        waitForVersion(2);
    }

    /** On a tablet the wide drawings are in the hand: what grows one way along the line, one way up the leaf, and both on the plan. */
    @Test
    void aFingerOnATabletDrawsThingsAndScrollsPastThem() {
        browser.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 1024, "height", 768, "deviceScaleFactor", 2, "mobile", true));
        browser.executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", true));
        go(Room.LINE);
        led("G1", 30, 0);
        waitForVersion(2);
        assertThat(text()).doesNotContain("\"run\": \"R1\", \"station\": \"26'\", \"opening\"");
        go(Room.GATES);
        led("G1a.m5", 0, -30);
        waitForVersion(3);
        assertThat(text()).containsPattern("\"infill\": \"6' \\d");
        go(Room.GROUND);
        led("P3", 30, 0);
        waitForVersion(4);
        assertThat(text()).contains("\"id\": \"P3\"");
        // Across the way that a gate moves on the line a finger scrolls, and the gate stays.
        go(Room.LINE);
        led("G1", 0, -60);
        assertThat(slider("G1").getAttribute("transform")).isIn(null, "", "translate(0 0)");
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(4);
    }

    /** A real finger, a little at a time. */
    private void led(String of, int right, int down) {
        WebElement part = slider(of);
        browser.executeScript("arguments[0].scrollIntoView({ block: 'center', behavior: 'instant' })", part);
        double x = at(part, "(box.left + box.right) / 2");
        double y = at(part, "(box.top + box.bottom) / 2");
        finger("touchStart", Map.of("x", x, "y", y));
        for (int i = 1; i <= 10; i++) finger("touchMove", Map.of("x", x + right * i / 10.0, "y", y + down * i / 10.0));
        browser.executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
    }

    private void finger(String what, Map<String, Double> place) {
        browser.executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", what, "touchPoints", List.of(place)));
    }

    private double at(WebElement part, String of) {
        return number("(box => " + of + ")(arguments[0].getBoundingClientRect())", part);
    }

    private double number(String of, Object... arguments) {
        Object said = browser.executeScript("return " + of, arguments);
        return said instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    private String bars() {
        return String.valueOf(
                browser.executeScript(
                        "return [...document.querySelectorAll('.sheets > figure')].filter(one => one.dataset.key.startsWith('Cut plan')).map(one => one.textContent).join()"));
    }

    private String place(int at) {
        return browser.findElements(By.cssSelector("form[data-of^='packet.'] label"))
                .get(at - 1)
                .getText();
    }
}
