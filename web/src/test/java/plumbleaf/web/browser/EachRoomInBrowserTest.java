package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import plumbleaf.web.page.Room;

/** A number typed or picked in each room answers in that room, its findings come and go, and one press takes it back. */
class EachRoomInBrowserTest extends InBrowser {
    @Test
    void inGroundATypedRodMovesTheGroundOnThePlan() {
        go(Room.GROUND);
        String before = css(".sheet svg").getText();
        type("ground.shots[1].rod", "6' 1");
        waitForVersion(2);
        assertThat(css(".sheet svg").getText()).isNotEqualTo(before);
        undo(3);
        assertThat(css(".sheet svg").getText()).isEqualTo(before);
    }

    @Test
    void inLineAGapTooLargeIsFoundAndGoesAgainWhenItIsMended() {
        go(Room.LINE);
        assertThat(numbers()).doesNotContain("must fix");
        type("runs[0].infill", "6' 8");
        waitForVersion(2);
        assertThat(numbers()).contains("must fix");
        undo(3);
        assertThat(numbers()).doesNotContain("must fix");
    }

    @Test
    void inStrengthAStrongerWindRaisesWhatThePostsAreUsed() {
        go(Room.STRENGTH);
        String before = css("tr[data-of=P2] td:last-child").getText();
        type("site.wind.speed", "140");
        waitForVersion(2);
        assertThat(Double.parseDouble(css("tr[data-of=P2] td:last-child").getText()))
                .isGreaterThan(Double.parseDouble(before));
        undo(3);
        assertThat(css("tr[data-of=P2] td:last-child").getText()).isEqualTo(before);
    }

    @Test
    void inStockAnotherPostIsAnotherLineOfTheOrder() {
        go(Room.STOCK);
        Select post = new Select(field("builds.R1.post"));
        String other = post.getOptions().stream()
                .filter(option -> !option.isSelected() && option.getText().contains("2.875"))
                .map(WebElement::getText)
                .findFirst()
                .orElseThrow();
        String before = numbers();
        post.selectByVisibleText(other);
        waitForVersion(2);
        assertThat(numbers()).isNotEqualTo(before);
        undo(3);
        assertThat(numbers()).isEqualTo(before);
    }

    @Test
    void inMoneyAMarginMovesThePriceAndShowsWhatItWas() {
        go(Room.MONEY);
        String before = css("[data-number='money.total']").getText();
        hold();
        type("money.margin", "25");
        waitForVersion(2);
        assertThat(css("[data-number='money.total'] .was").getText()).isEqualTo(before);
        undo(3);
        assertThat(css("[data-number='money.total'] .was").getText()).isNotEqualTo(before);
        pass();
        assertThat(browser.findElements(By.className("was"))).isEmpty();
        assertThat(css("[data-number='money.total']").getText()).isEqualTo(before);
    }

    @Test
    void inPapersTheSheetsFollowTheJob() {
        go(Room.PAPERS);
        assertThat(css(".sheet img").getAttribute("src")).endsWith("?v=1");
        go(Room.GATES);
        type("gates[0].opening", "4' 6");
        waitForVersion(2);
        go(Room.PAPERS);
        assertThat(css(".sheet img").getAttribute("src")).endsWith("?v=2");
        waitUntil("[...document.querySelectorAll('.sheet img')].some(one => one.complete && one.naturalWidth > 100)");
    }

    @Test
    void pointingAtAPostRingsItsRowItsHoleAndItselfInTheDrawing() {
        go(Room.LINE);
        browser.executeScript(
                "document.querySelector('.sheet [data-of=P3]').dispatchEvent(new PointerEvent('pointerover', {bubbles: true}))");
        assertThat(browser.findElements(By.cssSelector("#numbers tr.ring[data-of=P3]")))
                .hasSize(1);
        assertThat(browser.findElements(By.cssSelector(".sheet .ring[data-of=F3]")))
                .isNotEmpty();
        WebElement row = css("#numbers tr[data-of=P3]");
        assertThat(row.getText()).contains("10\"").contains("$");
    }

    private String numbers() {
        return css("#numbers").getText();
    }

    private void undo(int version) {
        css("#content").click();
        browser.findElement(By.tagName("body")).sendKeys(Keys.chord(Keys.CONTROL, "z"));
        waitForVersion(version);
    }
}
