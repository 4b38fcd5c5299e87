package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import plumbleaf.web.page.Room;

/** What one does with a thumb: see the drawing and its answer, leaf through, change, find the thing a line speaks of. */
class PhoneInBrowserTest extends InBrowser {
    @BeforeEach
    void narrow() {
        phone();
    }

    @Test
    void howTheGateSwingsAndSagsStandsBeforeWhatIsTyped() {
        go(Room.GATES);
        List<String> headings = browser.findElements(By.cssSelector("#numbers h2")).stream()
                .map(WebElement::getText)
                .toList();
        assertThat(headings.subList(0, 4)).containsExactly("Gate G1", "Swing", "Sag", "Opening and hand of G1");
    }

    @Test
    void theStripOfDrawingsIsAsHighAsTheOneInView() {
        go(Room.GATES);
        assertThat(css(".leafing output").getText()).isEqualTo("1 of 6");
        long first = high(".sheets");
        assertThat(first).isEqualTo(high(".sheets > figure"));
        css("[data-leaf='1']").click();
        waitUntil("document.querySelector('.leafing output').textContent === '2 of 6'");
        css("[data-leaf='1']").click();
        waitUntil("document.querySelector('.leafing output').textContent === '3 of 6'");
        assertThat(high(".sheets")).isLessThan(first).isEqualTo(high(".sheets > figure:nth-child(3)"));
    }

    @Test
    void whatLeafsKeepsTheFocusAtTheLastDrawing() {
        go(Room.GATES);
        for (int at = 2; at <= 6; at++) {
            css("[data-leaf='1']").sendKeys(Keys.ENTER);
            waitUntil("document.querySelector('.leafing output').textContent === arguments[0]", at + " of 6");
        }
        assertThat(css("[data-leaf='1']").getAttribute("aria-disabled")).isEqualTo("true");
        assertThat(browser.switchTo().activeElement()).isEqualTo(css("[data-leaf='1']"));
    }

    @Test
    void whatHasTheFocusStaysWhereItIsWhenTheStripAboveItGrows() {
        go(Room.GATES);
        css("[data-leaf='1']").click();
        waitUntil("document.querySelector('.leafing output').textContent === '2 of 6'");
        css("[data-leaf='1']").click();
        waitUntil("document.querySelector('.leafing output').textContent === '3 of 6'");
        long low = high(".sheets");
        WebElement held = css("#numbers a, #numbers button");
        browser.executeScript(
                "arguments[0].scrollIntoView({block: 'end', behavior: 'instant'}); arguments[0].focus()", held);
        double before = top(held);
        browser.executeScript("document.querySelector('.sheets').scrollTo({left: 0, behavior: 'instant'})");
        waitUntil("document.querySelector('.leafing output').textContent === '1 of 6'");
        assertThat(high(".sheets")).isGreaterThan(low);
        assertThat(top(held)).isCloseTo(before, within(1.0));
    }

    private double top(WebElement of) {
        Object top = browser.executeScript("return arguments[0].getBoundingClientRect().top", of);
        return top instanceof Number number ? number.doubleValue() : Double.NaN;
    }

    @Test
    void aTappedLineLeadsToItsThingInTheDrawing() {
        go(Room.LINE);
        WebElement row = css("#numbers tr[data-of=P11]");
        press(row);
        assertThat(row.getAttribute("class")).contains("ring");
        css("button.seen").click();
        waitUntil("/^[2-9] of/.test(document.querySelector('.leafing output').textContent)");
        assertThat(browser.findElements(By.cssSelector(".sheet .ring[data-of=P11]")))
                .isNotEmpty();
        assertThat(browser.findElements(By.cssSelector(".sheet .ring[data-of=F11]")))
                .isNotEmpty();
        assertThat(browser.findElements(By.cssSelector("button.seen"))).isEmpty();
    }

    @Test
    void noLetterOfADrawingIsTooSmallToRead() {
        for (Room room : Room.values()) {
            go(room);
            waitUntil("document.getElementById('inside').dataset.breadth !== 'wide'");
            Object small = browser.executeScript("""
                    return [...document.querySelectorAll('.sheet svg text')]
                        .filter(text => Math.hypot(text.getScreenCTM().a, text.getScreenCTM().b) * parseFloat(text.getAttribute('font-size')) < 8.9)
                        .map(text => text.textContent)""");
            assertThat(small).as(room.word()).isEqualTo(List.of());
        }
    }

    @Test
    void noNumberOfATableIsCutOff() {
        for (Room room : Room.values()) {
            go(room);
            Object cut = browser.executeScript("""
                    return [...document.querySelectorAll('.panel .cards td')]
                        .filter(cell => cell.offsetParent && cell.getBoundingClientRect().right > 390)
                        .map(cell => cell.textContent)""");
            assertThat(cut).as(room.word()).isEqualTo(List.of());
        }
    }

    @Test
    void everythingToPressIsAsBigAsAThumb() {
        for (Room room : Room.values()) {
            go(room);
            Object small = browser.executeScript("""
                    return [...document.querySelectorAll('button, summary, select, .rooms a')]
                        .filter(one => one.offsetParent && one.getBoundingClientRect().height < 43 && !one.closest('.entry'))
                        .map(one => one.textContent.trim() + ' ' + one.getBoundingClientRect().height)""");
            assertThat(small).as(room.word()).isEqualTo(List.of());
        }
    }

    private long high(String selector) {
        return css(selector).getSize().getHeight();
    }
}
