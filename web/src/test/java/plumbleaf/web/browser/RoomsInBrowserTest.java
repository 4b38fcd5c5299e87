package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;
import plumbleaf.web.Trial;
import plumbleaf.web.page.Room;

/** The rooms in a real browser: typing answers without a button, undo by key, two windows on one job, a phone's width, no complaint. */
class RoomsInBrowserTest extends InBrowser {
    @BeforeEach
    void ofOwn() {
        job = store.create("Kiln yard", Trial.yard(), "you");
    }

    @Test
    void typingANumberIsKeptWithoutAButtonAndUndoneByKey() {
        go(Room.GATES);
        type("gates[0].opening", "4' 6");
        waitForVersion(2);
        assertThat(text()).contains("\"opening\": \"4' 6\"");
        browser.findElement(By.tagName("h2")).click();
        browser.findElement(By.tagName("body")).sendKeys(Keys.chord(Keys.CONTROL, "z"));
        waitForVersion(3);
        assertThat(value("gates[0].opening")).isEqualTo("4'");
        assertThat(text()).isEqualTo(Trial.yard());
    }

    @Test
    void theFieldKeepsFocusWhileTheAnswerComesIn() {
        go(Room.GATES);
        type("gates[0].opening", "4' 6");
        WebElement next = field("gates[0].leaf.bottomGap");
        next.click();
        next.sendKeys(" ");
        waitForVersion(2);
        assertThat(browser.switchTo().activeElement().getAttribute("id")).isEqualTo("f-gates-0-leaf-bottomGap");
        assertThat(browser.switchTo().activeElement().getAttribute("value")).hasSize("3\"".length() + 1);
    }

    @Test
    void aSheetLookedAtCloserStaysSoThroughAnEditAndShowsAsAWholeAgain() {
        go(Room.GATES);
        WebElement sheet = browser.findElement(By.cssSelector(".sheet"));
        int whole = drawnWidth();
        sheet.sendKeys("++");
        assertThat(drawnWidth()).isGreaterThan(whole * 3 / 2);
        int closer = drawnWidth();
        type("gates[0].opening", "4' 6");
        waitForVersion(2);
        assertThat(drawnWidth()).isEqualTo(closer);
        browser.findElement(By.cssSelector("[data-zoom=fit]")).click();
        assertThat(drawnWidth()).isEqualTo(whole);
    }

    @Test
    void whatBringsASheetFurtherGivesTheFocusToTheSheetOnceItIsWhole() {
        go(Room.GATES);
        css("[data-zoom=in]").sendKeys(Keys.ENTER);
        css("[data-zoom=out]").sendKeys(Keys.ENTER);
        assertThat(browser.switchTo().activeElement()).isEqualTo(css(".sheet"));
    }

    private int drawnWidth() {
        return browser.findElement(By.cssSelector(".sheet svg")).getSize().getWidth();
    }

    @Test
    void aGateInSpaceTurnsByKeyAndSaysWhatIsUnderItWhereItStands() {
        openExample();
        go(Room.GATES);
        WebElement canvas = browser.findElement(By.cssSelector(".space canvas"));
        String before = drawn();
        canvas.sendKeys(Keys.ARROW_RIGHT);
        assertThat(drawn()).isNotEqualTo(before);
        assertThat(browser.findElement(By.cssSelector(".space output")).getText())
                .contains("clear at the least");
        browser.executeScript("const open = document.querySelector('.space input'); open.value = 85;"
                + " open.dispatchEvent(new Event('input', {bubbles: true}));");
        assertThat(browser.findElement(By.cssSelector(".space output")).getText())
                .startsWith("85°")
                .contains("into the ground");
    }

    @Test
    void aGateInSpaceIsDrawnAgainWhenTheDrawingSurfaceWasTakenAwayAndGivenBack() {
        go(Room.GATES);
        String before = drawn();
        browser.executeAsyncScript("""
                const [done] = arguments;
                const canvas = document.querySelector('.space canvas');
                const taken = canvas.getContext('webgl').getExtension('WEBGL_lose_context');
                canvas.addEventListener('webglcontextlost', () => setTimeout(() => taken.restoreContext()));
                canvas.addEventListener('webglcontextrestored', () => setTimeout(done));
                taken.loseContext();
                """);
        assertThat(drawn()).isEqualTo(before);
    }

    private String drawn() {
        return String.valueOf(browser.executeScript("return document.querySelector('.space canvas').toDataURL()"));
    }

    @Test
    void aRemedyIsAppliedWithOnePressAndUndoneWithOne() {
        openExample();
        go(Room.GATES);
        assertThat(browser.findElement(By.id("numbers")).getText()).contains("G1 strikes the ground");
        browser.findElement(By.xpath("//button[starts-with(text(), 'hang it on the right')]"))
                .click();
        waitForVersion(2);
        assertThat(browser.findElement(By.id("numbers")).getText()).doesNotContain("G1 strikes the ground");
        assertThat(browser.findElement(By.id("job-bar")).getText()).contains("hinge right");
        browser.findElement(By.xpath("//button[text()='Undo']")).click();
        waitForVersion(3);
        assertThat(browser.findElement(By.id("numbers")).getText()).contains("G1 strikes the ground");
    }

    @Test
    void aGateIsMovedByKeyOnTheUnrolledRun() {
        openExample();
        go(Room.LINE);
        WebElement gate = browser.findElement(By.cssSelector(".sheet [data-of=G1][role=slider]"));
        quickly(gate, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
        waitForVersion(2);
        assertThat(text()).contains("\"station\": \"26' 3\\\"\"");
    }

    @Test
    void aGateIsDraggedOnTheUnrolledRun() {
        openExample();
        go(Room.LINE);
        WebElement gate = browser.findElement(By.cssSelector(".sheet [data-of=G1][role=slider]"));
        new Actions(browser)
                .clickAndHold(gate)
                .moveByOffset(15, 0)
                .moveByOffset(15, 0)
                .release()
                .perform();
        waitForVersion(2);
        assertThat(text()).doesNotContain("\"run\": \"R1\", \"station\": \"26'\", \"opening\"");
    }

    @Test
    void everyRoomShowsADrawingOfTheExample() {
        openExample();
        for (Room room : Room.values()) {
            go(room);
            assertThat(browser.findElements(By.cssSelector(".sheet svg, .sheet img")))
                    .as(room.word())
                    .isNotEmpty();
        }
    }

    private void openExample() {
        job = store.open(demo.put()).orElseThrow();
    }

    @Test
    void twoWindowsOnOneJobSeeEachOther() {
        go(Room.GATES);
        store.edit(job.id(), 1, "Kiln yard", Trial.yard().replace("\"4'\"", "\"5'\""), "opening 5'", "Odo");
        type("gates[0].opening", "4' 6");
        waitUntil("document.getElementById('conflict') !== null");
        String conflict = browser.findElement(By.id("conflict")).getText();
        assertThat(conflict).contains("Odo: opening 5'", "5'", "4' 6");
        browser.findElement(By.xpath("//button[text()='Put mine in']")).click();
        waitForVersion(3);
        assertThat(text()).contains("\"opening\": \"4' 6\"");
    }

    @Test
    void atAPhonesWidthNothingStandsOverTheEdge() {
        browser.manage().window().setSize(new Dimension(500, 844));
        phone();
        for (Room room : Room.values()) {
            go(room);
            long wide = number("return document.documentElement.scrollWidth");
            assertThat(wide).as(room.word()).isLessThanOrEqualTo(390);
            long navigation = number("return document.querySelector('nav.rooms').scrollWidth");
            assertThat(navigation).as(room.word() + " rooms").isLessThanOrEqualTo(390);
        }
    }

    private long number(String script) {
        return browser.executeScript(script) instanceof Number read ? read.longValue() : -1;
    }
}
