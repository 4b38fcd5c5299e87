package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import plumbleaf.web.page.Room;

/** The drawing is the input: posts, corners and gates on plan and profile, rails, hinges and posts on the leaf. */
class HandlesInBrowserTest extends InBrowser {
    @Test
    void aPostIsDraggedAlongThePlanAndStaysThere() {
        go(Room.GROUND);
        drag("P3", 12, 0);
        waitForVersion(2);
        assertThat(text()).containsPattern("\"set\": \\[ \\{ \"id\": \"P3\", \"station\": \"1\\d'");
        go(Room.LINE);
        assertThat(css("#numbers").getText()).contains("P3");
    }

    @Test
    void aPostIsMovedByKeyOnTheProfileAndLetGoAgain() {
        go(Room.LINE);
        slider("P3").sendKeys(Keys.ARROW_RIGHT);
        waitForVersion(2);
        assertThat(text()).contains("\"set\": [ { \"id\": \"P3\", \"station\": \"13'\" } ]");
        browser.findElement(By.cssSelector("[aria-label='Take P3 out']")).click();
        waitForVersion(3);
        assertThat(text()).doesNotContain("\"P3\"");
    }

    @Test
    void aCornerIsDraggedAlongItsLegOnThePlan() {
        go(Room.GROUND);
        drag("P10", 20, 0);
        waitForVersion(2);
        assertThat(text()).doesNotContain("\"legs\": [{ \"length\": \"56'\"").containsPattern("\"length\": \"57' \\d");
    }

    @Test
    void aGateMovesAlongItsLegOnThePlanByKey() {
        go(Room.GROUND);
        quickly(slider("G1 G1a"), Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        waitForVersion(2);
        assertThat(text()).contains("\"station\": \"26' 2\\\"\"");
    }

    @Test
    void aKeyThatIsPressedWhileTheLastChangeIsAnsweredCountsToo() {
        moveUnanswered(Room.LINE, "G1");
        browser.executeScript("window.asItIs = setTimeout;"
                + "window.setTimeout = (then, ms, ...more) => asItIs(then, 1000 * ms, ...more)");
        slider("G1").sendKeys(Keys.ARROW_RIGHT);
        browser.executeScript("answer()");
        waitForVersion(2);
        assertThat(slider("G1").getAttribute("aria-valuetext")).isEqualTo("26' 2\"");
        browser.executeScript("window.setTimeout = asItIs");
        slider("G1").sendKeys(Keys.ARROW_RIGHT);
        waitForVersion(3);
        assertThat(text()).contains("\"station\": \"26' 3\\\"\"");
    }

    @Test
    void anAnswerThatComesWhileAHandHoldsSomethingIsShownWhenItLetsGo() {
        moveUnanswered(Room.GROUND, "G1 G1a");
        Object place = browser.executeScript("""
                const box = document.querySelector(".sheet [data-of=P10][role=slider]").getBoundingClientRect();
                for (let y = box.top; y < box.bottom; y += 2)
                    for (let x = box.left; x < box.right; x += 2)
                        if (document.elementFromPoint(x, y)?.closest("[data-of]")?.dataset.of === "P10") return x + " " + y;
                """);
        List<String> at = List.of(String.valueOf(place).split(" ", -1));
        double x = Double.parseDouble(at.get(0));
        double y = Double.parseDouble(at.get(1));
        mouse("mousePressed", x, y);
        mouse("mouseMoved", x + 10, y);
        browser.executeScript("answer()");
        waitUntil("!Object.keys(localStorage).some((key) => key.startsWith('plumbleaf.waiting.'))");
        assertThat(css("#inside").getAttribute("data-version")).isEqualTo("1");
        mouse("mouseMoved", x + 20, y);
        mouse("mouseReleased", x + 20, y);
        waitForVersion(3);
        assertThat(text()).contains("\"station\": \"26' 1\\\"\"").containsPattern("\"length\": \"57' \\d");
    }

    private void mouse(String what, double x, double y) {
        boolean pressed = !what.equals("mouseReleased");
        browser.executeCdpCommand(
                "Input.dispatchMouseEvent",
                Map.of("type", what, "x", x, "y", y, "button", "left", "buttons", pressed ? 1 : 0, "clickCount", 1));
    }

    /** The gate by an inch; the page hears of it once {@code answer()} is called there. */
    private void moveUnanswered(Room room, String gate) {
        go(room);
        browser.executeScript("""
                const real = fetch;
                window.asked = 0;
                const answered = new Promise((answer) => { window.answer = answer; });
                window.fetch = async (...how) => { asked++; await answered; return real(...how); };
                """);
        slider(gate).sendKeys(Keys.ARROW_RIGHT);
        waitUntil("asked === 1");
    }

    @Test
    void theTopRailIsDraggedUpAndTheNumbersFollowWhileItMoves() {
        go(Room.GATES);
        WebElement rail = slider("G1a.m5");
        String weight = number("G1a.wet");
        Actions hand = new Actions(browser);
        hand.moveToElement(rail)
                .clickAndHold()
                .moveByOffset(0, -10)
                .moveByOffset(0, -10)
                .perform();
        waitUntil("document.querySelector('[data-number=\"G1a.wet\"]').textContent !== '" + weight + "'");
        assertThat(css(".moving:not(:empty)").getText()).startsWith("Height of the infill: 6'");
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(1);
        hand.release().perform();
        waitForVersion(2);
        assertThat(text()).containsPattern("\"infill\": \"6' \\d[^\"]*\\\\\"\"");
    }

    @Test
    void theLeafsHingesAndRailsMoveByHalfInchesWithTheArrowKeys() {
        go(Room.GATES);
        slider("G1a.h1").sendKeys(Keys.ARROW_UP);
        waitForVersion(2);
        assertThat(text()).contains("\"fromBottom\": \"9-1/2\\\"\"");
        slider("G1a.h2").sendKeys(Keys.ARROW_UP);
        waitForVersion(3);
        assertThat(text()).contains("\"fromTop\": \"8-1/2\\\"\"");
        slider("G1a.m4").sendKeys(Keys.ARROW_DOWN);
        waitForVersion(4);
        assertThat(text()).contains("\"midRailsAt\": [\"");
        slider("G1a.m3").sendKeys(Keys.ARROW_UP);
        waitForVersion(5);
        assertThat(text()).contains("\"bottomGap\": \"3-1/2\\\"\"");
    }

    @Test
    void theOpeningIsDraggedAtTheLatchPost() {
        go(Room.GATES);
        quickly(slider("P6"), Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        waitForVersion(2);
        assertThat(text()).contains("\"opening\": \"4' 1\\\"\"");
    }

    @Test
    void aShotBesideTheRunIsDraggedBothWaysAsOneChange() {
        go(Room.GROUND);
        String shot = shotBeside();
        List<String> before = measuresOf(shot);
        assertThat(before).hasSize(2);
        drag(shot, 24, -18);
        waitForVersion(2);
        List<String> after = measuresOf(shot);
        assertThat(after.get(0)).isNotEqualTo(before.get(0));
        assertThat(after.get(1)).isNotEqualTo(before.get(1));
        css("[data-key=undo]").click();
        waitForVersion(3);
        assertThat(text()).isEqualTo(job.document());
    }

    @Test
    void aRunIsMovedByItsStartWithTheArrowKeys() {
        type("runs[0].start.east", "0'", Room.LINE);
        go(Room.GROUND);
        int version = Math.toIntExact(store.open(job.id()).orElseThrow().version());
        quickly(slider("P1"), Keys.ARROW_RIGHT, Keys.ARROW_UP);
        waitForVersion(version + 1);
        assertThat(text()).contains("\"east\": \"1\\\"\"").contains("\"north\": \"1\\\"\"");
    }

    @Test
    void theLatchIsMovedUpTheLeaf() {
        go(Room.GATES);
        quickly(slider("G1a.latch"), Keys.ARROW_UP, Keys.ARROW_UP);
        waitForVersion(2);
        assertThat(text()).contains("\"height\": \"3' 7\\\"\"");
    }

    @Test
    void howFarTheGateOpensIsTurnedByKeyAndByHand() {
        go(Room.GATES);
        WebElement open = slider("G1 G1.open");
        assertThat(open.getAttribute("aria-valuetext")).isEqualTo("90 deg");
        quickly(open, Keys.ARROW_DOWN, Keys.ARROW_DOWN);
        waitForVersion(2);
        assertThat(text()).contains("\"opens\": \"80 deg\"");
        turn("G1 G1.open", 80, 112, "mouse");
        waitForVersion(3);
        assertThat(text()).contains("\"opens\": \"110 deg\"");
    }

    @Test
    void aPairOpensByEitherLeaf() {
        String pair = text().replace("\"kind\": \"swing\"", "\"kind\": \"pair\", \"split\": \"45%\"")
                .replace("\"hinge\": \"left\", ", "");
        job = store.create("Pair", pair, "you");
        go(Room.GATES);
        quickly(slider("G1b G1b.open"), Keys.ARROW_DOWN, Keys.ARROW_DOWN);
        waitForVersion(2);
        assertThat(text()).contains("\"opens\": \"80 deg\"");
        turn("G1b G1b.open", 80, 97, "mouse");
        waitForVersion(3);
        assertThat(text()).contains("\"opens\": \"95 deg\"");
        turn("G1a G1a.open", 95, 72, "mouse");
        waitForVersion(4);
        assertThat(text()).contains("\"opens\": \"70 deg\"");
    }

    @Test
    void aFingerDragsAGateOnAPhone() {
        phone();
        go(Room.LINE);
        touch("G1", 25, 0);
        waitForVersion(2);
        assertThat(text()).doesNotContain("\"run\": \"R1\", \"station\": \"26'\", \"opening\"");
    }

    @Test
    void aFingerTakesHoldOfShotsTheRunTheLatchAndHowFarTheGateOpens() {
        phone();
        go(Room.GROUND);
        waitUntil("document.getElementById('inside').dataset.breadth === 'narrow'");
        String shot = shotBeside();
        List<String> before = measuresOf(shot);
        touch(shot, 30, -30);
        waitForVersion(2);
        assertThat(measuresOf(shot)).doesNotContainAnyElementsOf(before);
        type("runs[0].start.east", "0'", Room.LINE);
        go(Room.GROUND);
        int version = now();
        touch("P1", 30, 0);
        waitForVersion(version + 1);
        assertThat(text()).containsPattern("\"east\": \"\\d+' ?\\d*");
        go(Room.GATES);
        touch("G1a.latch", 0, -20);
        waitForVersion(version + 2);
        assertThat(text()).doesNotContain("\"height\": \"3' 6\\\"\"");
        touch("P6", 20, 0);
        waitForVersion(version + 3);
        assertThat(text()).doesNotContain("\"opening\": \"4'\"");
        turn("G1 G1.open", 90, 72, "touch");
        waitForVersion(version + 4);
        assertThat(text()).contains("\"opens\": \"70 deg\"");
    }

    @Test
    void aFingerThatScrollsAwayChangesNothing() {
        go(Room.LINE);
        browser.executeScript("""
                const part = document.querySelector('.sheet [data-of=G1][role=slider]');
                const at = (type, x) => part.dispatchEvent(new PointerEvent(type, { pointerId: 1, pointerType: 'touch', isPrimary: true,
                    button: type === 'pointermove' ? -1 : 0, bubbles: true, cancelable: true, clientX: x, clientY: 300 }));
                part.setPointerCapture = () => {};
                at('pointerdown', 300);
                at('pointermove', 340);
                at('pointercancel', 340);
                """);
        assertThat(css(".sheet [data-of=G1][role=slider]").getAttribute("transform"))
                .isEqualTo("translate(0 0)");
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(1);
    }

    private int now() {
        return Math.toIntExact(store.open(job.id()).orElseThrow().version());
    }

    /** Takes the leaf where it stands open and leads it round its pin. */
    private void turn(String of, int from, int to, String pointer) {
        browser.executeScript("""
                const [of, begin, end, pointer] = arguments;
                const part = document.querySelector(`.sheet [data-of="${of}"][role=slider]`);
                part.scrollIntoView({block: 'center', inline: 'center', behavior: 'instant'});
                const svg = part.closest('svg');
                const [left, bottom, right, top] = svg.dataset.frame.split(' ').map(Number);
                const at = (x, y) => new DOMPoint(svg.viewBox.baseVal.x + (x - left) * svg.viewBox.baseVal.width / (right - left),
                    svg.viewBox.baseVal.y + (top - y) * svg.viewBox.baseVal.height / (top - bottom)).matrixTransform(svg.getScreenCTM());
                const mark = [...svg.closest('.sheet').querySelectorAll('.handle')].find((one) => one.dataset.of === of);
                const ray = (deg) => { const from = Math.atan2(Number(mark.dataset.dy), Number(mark.dataset.dx));
                    const is = from + Number(mark.dataset.turn) * deg * Math.PI / 180;
                    return at(Number(mark.dataset.about) + 30 * Math.cos(is), 30 * Math.sin(is)); };
                part.setPointerCapture = () => {};
                const send = (type, point) => part.dispatchEvent(new PointerEvent(type, { pointerId: 1, pointerType: pointer, isPrimary: true,
                    button: type === 'pointermove' ? -1 : 0, bubbles: true, cancelable: true, clientX: point.x, clientY: point.y }));
                send('pointerdown', ray(begin));
                send('pointermove', ray((begin + end) / 2));
                send('pointermove', ray(end));
                send('pointerup', ray(end));
                """, of, from, to, pointer);
    }

    private String shotBeside() {
        return (String) Objects.requireNonNull(browser.executeScript("""
                return [...document.querySelectorAll('.sheet [role=slider]')].map(one => [one.dataset.of, one.closest('.sheet')])
                    .find(([of, sheet]) => /^S/.test(of) && [...sheet.querySelectorAll('.handle')].filter(one => one.dataset.of === of).length === 2)[0]"""));
    }

    /** What each handle of a thing measures now. */
    @SuppressWarnings("unchecked")
    private List<String> measuresOf(String of) {
        return (List<String>) Objects.requireNonNull(browser.executeScript(
                "return [...document.querySelectorAll('.handle')].filter(one => one.dataset.of === arguments[0]).map(one => one.dataset.now)",
                of));
    }

    private void type(String path, String value, Room room) {
        go(room);
        if (!value.equals(value(path))) type(path, value);
    }

    private String number(String key) {
        return css("[data-number='" + key + "']").getText();
    }
}
