package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import plumbleaf.web.Trial;

/** The walk about a site on a phone: one question a screen, a pad for feet and inches, everything may stay open. */
class WalkInBrowserTest extends InBrowser {
    @BeforeEach
    void narrow() {
        phone();
    }

    @Test
    void aFenceOfWhichNothingIsKnownIsWalkedFromTheStreetToTheLastLook() {
        go("/new/fence");
        follow(".sheet-form button");
        assertThat(asked()).isEqualTo("Street");
        int screens = 1;
        while (!asked().equals("Before you leave") && screens < 40) {
            follow(".walk-on .next");
            screens++;
        }
        assertThat(screens).isBetween(8, 12);
        assertThat(css(".step").getText())
                .contains("runs[0].style is not filled in yet", "Nothing can be priced before");
    }

    @Test
    void theLengthOfALegIsTypedWithOneThumbAndPricedAtOnce() {
        job = store.create("Draft", """
                { "format": "plumbleaf-job", "version": 1, "title": "Draft", "draft": true,
                  "ground": { "shots": [ { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" } ] },
                  "runs": [ { "id": "R1", "legs": [ { "bearing": "90 deg" } ], "style": "wood-side-by-side" } ] }
                """, "you");
        go("/jobs/" + job.id() + "/walk/3");
        assertThat(asked()).isEqualTo("Leg R1.1");
        field("runs[0].legs[0].length").click();
        for (String key : List.of("4", "6", "'", "2", "1/2", "5/8", "ok")) pad(key);
        waitForVersion(2);
        assertThat(text()).contains("\"length\": \"46'2-5/8\"");
        assertThat(css("[data-number=stand]").getText()).contains("$");
        assertThat(browser.findElements(By.cssSelector(".keypad"))).isEmpty();
    }

    @Test
    void aSingleGateTakesTwelveQuestionsAndTheLastLook() {
        job = store.create("Kiln gate", Trial.yard(), "you");
        go("/new");
        css("[name='gates[0].opening']").sendKeys("4'");
        follow("button[value=walk]");
        assertThat(css(".step .about").getText()).endsWith("of 13");
        assertThat(asked()).isEqualTo("What for");
        new Select(css("[name=value]")).selectByValue("drive");
        waitForVersion(2);
        css("[data-key=undo]").click();
        waitForVersion(3);
        String at = browser.getCurrentUrl().replaceAll("/\\d+$", "/13");
        browser.get(at);
        assertThat(asked()).isEqualTo("Before you leave");
        List<WebElement> movers = browser.findElements(By.cssSelector("[data-number^='mover.']"));
        assertThat(movers).isNotEmpty();
        long before = Long.MAX_VALUE;
        for (WebElement mover : movers) {
            assertThat(mover.getText()).matches("[-+]\\$[\\d,]+\\.\\d\\d");
            long cents = Long.parseLong(mover.getText().replaceAll("[^0-9]", ""));
            assertThat(cents).isLessThanOrEqualTo(before);
            before = cents;
        }
    }

    /** Six tape readings and the picture of the hand; at 15 s an answer, judgement, a checked gate stands in under two minutes. */
    @Test
    void sixReadingsAndAPickAreEnoughForACheckedGate() {
        go("/new");
        WebElement hand = browser.findElements(By.cssSelector("[name=hand]")).get(0);
        browser.executeScript("arguments[0].click()", hand);
        List<WebElement> asked = browser.findElements(By.cssSelector(".sheet-form input[id]"));
        for (String reading : List.of("4'", "5' 11", "3", "-3", "-5", "-7")) {
            WebElement field = asked.stream()
                    .filter(one -> !List.of("title", "site.customer", "site.phone", "site.address", "hand")
                            .contains(one.getAttribute("name")))
                    .filter(one -> String.valueOf(one.getAttribute("value")).isEmpty())
                    .findFirst()
                    .orElseThrow();
            field.sendKeys(reading);
        }
        // What a person gave, as the page itself has it: name, customer, soil and the rest stayed as they came.
        assertThat(filled())
                .containsExactly(
                        "hand",
                        "gates[0].opening",
                        "gates[0].leaf.infill",
                        "gates[0].leaf.bottomGap",
                        "ground.shots[1].elevation",
                        "ground.shots[2].elevation",
                        "ground.shots[3].elevation");
        follow(".sheet-form button:not([name])");
        assertThat(css("#job-bar .verdict").getText()).isIn("passes", "must fix");
        assertThat(browser.getPageSource()).doesNotContain("is not filled in yet");
        browser.get(browser.getCurrentUrl().replace("/gates", "/strength"));
        assertThat(browser.getPageSource())
                .contains("Load path of G1", "From the weakest link", "Checks that hold")
                .doesNotContain("is not filled in yet");
    }

    /** Names of the fields that differ from how the page came. */
    private List<String> filled() {
        Object names = browser.executeScript("""
                return [...document.querySelectorAll(".sheet-form input:not([type=hidden]), .sheet-form select")]
                    .filter(one => one.type === "radio" ? one.checked && !one.defaultChecked
                        : one.tagName === "SELECT" ? one.selectedIndex > 0 && !one.selectedOptions[0].defaultSelected
                        : one.value !== one.defaultValue)
                    .map(one => one.name);
                """);
        return ((List<?>) Objects.requireNonNull(names))
                .stream().map(String::valueOf).toList();
    }

    /** The table of the walk: a minute a screen, two for a leg with its breaks; 20 minutes for two legs and a gate. */
    @Test
    void aFenceOfTwoLegsAndAGateIsWalkedInTwentyMinutes() {
        go("/jobs/" + job.id() + "/walk/1");
        List<WebElement> screens = browser.findElements(By.cssSelector(".asked-all li"));
        long legs = screens.stream()
                .filter(screen ->
                        String.valueOf(screen.getAttribute("textContent")).contains("Leg "))
                .count();
        assertThat(legs).isEqualTo(2);
        assertThat(screens.size() + legs).isLessThanOrEqualTo(20);
        assertThat(asked()).isEqualTo("Street");
        for (String path : List.of(
                "site.customer",
                "site.phone",
                "site.address",
                "site.access.parking",
                "site.access.dogs",
                "site.access.services",
                "site.access.passage",
                "site.access.carry"))
            assertThat(field(path).isDisplayed()).as(path).isTrue();
        type("site.access.dogs", "one, in the yard");
        waitForVersion(2);
        assertThat(text()).contains("\"dogs\": \"one, in the yard\"");
        assertThat(css(".step a[href$='/files']").getText()).contains("photos");
    }

    @Test
    void aPhotoIsFiledUnderTheQuestionItAnswersAndShownThere() throws IOException {
        go("/jobs/" + job.id() + "/walk/1");
        int hand = browser.findElements(By.cssSelector(".asked-all li")).stream()
                        .map(one ->
                                String.valueOf(one.getAttribute("textContent")).strip())
                        .toList()
                        .indexOf("Hand of G1")
                + 1;
        go("/jobs/" + job.id() + "/walk/" + hand);
        Path photo = Files.createTempDirectory("photo").resolve("from the lane.png");
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
        css("#snap").sendKeys(photo.toString());
        follow(".snap button");
        assertThat(asked()).isEqualTo("Hand of G1");
        assertThat(css(".snaps img").getAttribute("alt")).isEqualTo("Hand of G1, from the lane.png");
        waitUntil("document.querySelector('.snaps img').naturalWidth === 40");
        follow(".walk-on .next");
        assertThat(browser.findElements(By.cssSelector(".snaps img"))).isEmpty();
        go("/jobs/" + job.id() + "/files");
        assertThat(css(".photos li").getText()).startsWith("G1 Hand of G1, from the lane.png");
    }

    @Test
    void whatMovesThePriceOfAFenceMostIsListedBeforeOneLeaves() {
        go("/jobs/" + job.id() + "/walk/99");
        assertThat(asked()).isEqualTo("Before you leave");
        List<WebElement> movers = browser.findElements(By.cssSelector("[data-number^='mover.']"));
        assertThat(movers).hasSizeBetween(1, 5);
        assertThat(movers).allSatisfy(mover -> assertThat(mover.getText()).matches("[-+]\\$[\\d,]+\\.\\d\\d"));
    }

    @Test
    void nothingOfTheWalkStandsOverTheEdgeOfAPhone() {
        for (int step = 1; step <= 20; step++) {
            go("/jobs/" + job.id() + "/walk/" + step);
            waitUntil("document.documentElement.scrollWidth <= 390");
        }
    }

    private String asked() {
        return css("#asked").getText();
    }

    private void pad(String key) {
        css(".keypad [data-pad=\"" + key + "\"]").click();
    }
}
