package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import plumbleaf.web.page.Room;

/** What is wrong is said in the room where it is made, beside the thing it concerns, and goes when it is mended. Line and gates: see there. */
class FindingsInEachRoomTest extends InBrowser {
    @Test
    void inGroundAShotFarOffItsNeighborsIsDoubtedUntilItIsReadAgain() {
        go(Room.GROUND);
        assertThat(found()).noneMatch(one -> one.contains("S3") && one.contains("neighbor"));
        String rod = value("ground.shots[2].rod");
        type("ground.shots[2].rod", "12'");
        waitForVersion(2);
        assertThat(found()).anyMatch(one -> one.contains("S3"));
        type("ground.shots[2].rod", rod);
        waitForVersion(3);
        assertThat(found()).noneMatch(one -> one.contains("S3") && one.contains("neighbor"));
    }

    @Test
    void inStrengthAHoleAboveTheFrostIsNamedUntilItIsDeepEnough() {
        go(Room.STRENGTH);
        assertThat(found()).noneMatch(one -> one.contains("frost line"));
        type("builds.R1.depth", "1'");
        waitForVersion(2);
        assertThat(found()).anyMatch(one -> one.contains("frost line"));
        type("builds.R1.depth", "3'");
        waitForVersion(3);
        assertThat(found()).noneMatch(one -> one.contains("frost line"));
    }

    @Test
    void inStockPostsLongerThanAnyBarAreNamedUntilTheyFit() {
        go(Room.STOCK);
        List<String> before = found();
        type("builds.R1.depth", "20'");
        waitForVersion(2);
        assertThat(found()).anyMatch(one -> one.contains("longer than any bar that is sold"));
        type("builds.R1.depth", "36");
        waitForVersion(3);
        assertThat(found()).isEqualTo(before);
    }

    @Test
    void inMoneyABookThatIsNotThereIsNamedUntilOneThatIs() {
        go(Room.MONEY);
        List<String> before = found();
        type("money.priceBook", "winter-2031");
        waitForVersion(2);
        assertThat(found()).anyMatch(one -> one.contains("winter-2031"));
        css("[data-key=undo]").click();
        waitForVersion(3);
        assertThat(found()).isEqualTo(before);
    }

    @Test
    void inPapersWhatIsMarkedOnEveryPageGoesWithItsCureAndComesBackWithUndo() {
        go(Room.PAPERS);
        List<String> before = found();
        assertThat(before).anyMatch(one -> one.contains("strikes the ground"));
        browser.findElement(By.xpath("//button[starts-with(text(), 'hang it on the right')]"))
                .click();
        waitForVersion(2);
        assertThat(found()).noneMatch(one -> one.contains("strikes the ground"));
        css("[data-key=undo]").click();
        waitForVersion(3);
        assertThat(found()).isEqualTo(before);
    }

    /** Every finding of the room, as it is read. */
    private List<String> found() {
        return browser.findElements(By.cssSelector("#numbers .note")).stream()
                .map(WebElement::getText)
                .collect(Collectors.toList());
    }
}
