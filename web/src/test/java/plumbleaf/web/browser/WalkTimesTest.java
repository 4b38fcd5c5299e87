package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** How long the walks take by the keystroke-level model, with the answers of a site that does not exist; the table in the docs says the same. */
class WalkTimesTest extends InBrowser {
    private static final int CHECKED_GATE_S = 120;
    private static final int SINGLE_GATE_S = 8 * 60;
    private static final int FENCE_S = 20 * 60;

    private Keystrokes hand;

    @BeforeEach
    void narrow() {
        phone();
        hand = new Keystrokes(browser);
    }

    @Test
    void aCheckedGateFromSixReadingsInUnderTwoMinutes() throws IOException {
        go("/");
        hand.follow(css("a[href='/new']"));
        measure();
        hand.follow(css(".sheet-form button:not([name])"));
        assertThat(css("#job-bar .verdict").getText()).isIn("passes", "must fix");
        holds("A checked gate from six readings", CHECKED_GATE_S);
    }

    @Test
    void aSingleGateInEightMinutes() throws IOException {
        go("/");
        hand.follow(css("a[href='/new']"));
        measure();
        hand.pick(css("[name='site.soil.kind']"), "clay");
        hand.write(css("[name='site.customer']"), "Odile Brackwater");
        hand.write(css("[name='site.phone']"), "555 0142");
        hand.write(css("[name='site.address']"), "4 Sallow Row, Tern Hythe");
        hand.follow(css("button[value=walk]"));
        while (!asked().equals("Before you leave")) {
            switch (asked()) {
                case "What for" -> hand.pick(field("site.uses"), "walk");
                case "What holds the hinge post of G1" -> hand.pick(field("gates[0].hingePost.support"), "new-footing");
                case "Ground that rises under G1" -> hand.pad(field("gates[0].loads.laterRise"), "1", "1/2");
                case "Latch of G1" -> hand.pad(field("gates[0].latch.height"), "4", "2");
                default -> {
                    // Said already, or left as it is assumed.
                }
            }
            next();
        }
        assertThat(browser.findElements(By.cssSelector("[data-number^='mover.']")))
                .isNotEmpty();
        holds("One gate: six readings, the other six answers, the last look", SINGLE_GATE_S);
    }

    @Test
    void aFenceOfTwoLegsAndAGateInTwentyMinutes() throws IOException {
        go("/");
        hand.follow(css("a[href='/new/fence']"));
        hand.write(css("[name='site.customer']"), "Odile Brackwater");
        hand.write(css("[name='site.phone']"), "555 0142");
        hand.write(css("[name='site.address']"), "4 Sallow Row, Tern Hythe");
        hand.pad(css("[name='runs[0].legs[0].length']"), "6", "4", "'");
        hand.pick(css("[name='runs[0].style']"), "wood-side-by-side");
        hand.follow(css(".sheet-form button"));
        while (!asked().equals("Before you leave")) {
            switch (asked()) {
                case "Street" -> {
                    hand.write(field("site.access.dogs"), "one, in the yard");
                    hand.pad(field("site.access.passage"), "3", "6");
                    hand.pad(field("site.access.carry"), "4", "0", "'");
                }
                case "Papers" -> hand.pad(field("rules.height.limit"), "6", "'");
                case "Leg R1.1" -> {
                    breaks("18", "-7");
                    breaks("33", "-19");
                    breaks("64", "-30");
                    leg("41", "90 deg left");
                }
                case "Leg R1.2" -> {
                    breaks("80", "-24");
                    breaks("105", "-11");
                }
                case "Ends of R1" -> gate();
                case "Hand of G1" -> hand.pick(field("gates[0].swing"), "in");
                case "Opening of G1" -> {
                    hand.pad(field("gates[0].leaf.infill"), "5", "'", "space", "1", "1");
                    hand.pad(field("gates[0].leaf.bottomGap"), "2");
                }
                case "Ground at G1" -> {
                    beside("24", "2", "-10");
                    beside("21", "3", "-14");
                }
                case "Old fence" -> oldFence();
                case "Soil, wind and frost" -> hand.pick(field("site.soil.kind"), "clay");
                default -> {
                    // Said already, or left as it is assumed.
                }
            }
            next();
        }
        assertThat(css(".asked-all").getAttribute("textContent")).contains("Leg R1.2", "Hand of G1");
        assertThat(css("[data-number=stand]").getText()).contains("$");
        holds("A fence of two legs with seven shots, and a gate", FENCE_S);
    }

    /** The hand and six readings of a gate. */
    private void measure() {
        hand.tap(css("[name=hand][value=left-in]"));
        hand.pad(css("[name='gates[0].opening']"), "3", "'", "1", "0", "1/2", "next");
        hand.pad(css("[name='gates[0].leaf.infill']"), "5", "'", "1", "1", "next");
        hand.pad(css("[name='gates[0].leaf.bottomGap']"), "2", "next");
        hand.pad(css("[name='ground.shots[1].elevation']"), "-", "2", "1/2", "next");
        hand.pad(css("[name='ground.shots[2].elevation']"), "-", "4", "3/4", "next");
        hand.pad(css("[name='ground.shots[3].elevation']"), "-", "6", "ok");
    }

    /** Where the slope changes along a leg. */
    private void breaks(String station, String up) {
        shot(station, up);
        keep("Add shot");
    }

    /** A shot beside the run, on the inside. */
    private void beside(String station, String in, String up) {
        shot(station, up);
        unfold("[data-key='e-ground-shots-rest']");
        hand.pad(css("#e-ground-shots-in"), in.split(""));
        keep("Add shot");
    }

    private void shot(String station, String up) {
        unfold("[data-key='e-ground-shots']");
        hand.pad(css("#e-ground-shots-station"), (station + "'").split(""));
        hand.pad(css("#e-ground-shots-elevation"), up.split(""));
    }

    private void leg(String length, String turn) {
        unfold("[data-key^='e-runs-'][data-key$='-legs']");
        hand.pad(css("[id^='e-runs-'][id$='-legs-length']"), (length + "'").split(""));
        hand.write(css("[id^='e-runs-'][id$='-legs-turn']"), turn);
        keep("Add leg");
    }

    private void gate() {
        unfold("[data-key='e-gates']");
        hand.pad(css("#e-gates-station"), "2", "4", "'");
        hand.pad(css("#e-gates-opening"), "3", "'", "1", "0");
        hand.pick(css("#e-gates-hinge"), "left");
        keep("Add gate");
    }

    private void oldFence() {
        unfold("[data-key='e-existing-fences']");
        hand.write(css("#e-existing-fences-kind"), "wood");
        hand.pad(css("#e-existing-fences-length"), "9", "0", "'");
        keep("Add");
    }

    private void unfold(String form) {
        WebElement details = css(form);
        if (!Boolean.parseBoolean(details.getAttribute("open"))) hand.tap(details.findElement(By.tagName("summary")));
    }

    private void keep(String words) {
        int version = version();
        hand.tap(browser.findElement(By.xpath("//details[@open]//button[starts-with(., '" + words + "')]")));
        waitForVersion(version + 1);
    }

    private int version() {
        Object now = browser.executeScript("return Number(document.getElementById('inside').dataset.version)");
        return now instanceof Number number ? number.intValue() : 0;
    }

    private void next() {
        if (!browser.findElements(By.cssSelector(".keypad")).isEmpty()) hand.done();
        hand.follow(css(".walk-on .next"));
    }

    private String asked() {
        return css("#asked").getText();
    }

    private void holds(String walk, int limitS) throws IOException {
        assertThat(hand.seconds()).isLessThan(limitS);
        assertThat(Files.readString(Path.of("../docs/accessibility.md"))).contains(hand.line(walk, limitS));
    }
}
