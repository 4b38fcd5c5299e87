package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;

/** How long the walks take by the keystroke-level model, with the answers of a site that does not exist; the table in the docs says the same. */
class WalkTimesTest extends InBrowser {
    private static final int CHECKED_GATE_S = 120;
    private static final int SINGLE_GATE_S = 8 * 60;

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
