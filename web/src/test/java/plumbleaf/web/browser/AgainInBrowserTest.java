package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.Select;
import plumbleaf.web.page.Room;

/** A gate and a run once more, a build of the house in another job, a job in millimeters. */
class AgainInBrowserTest extends InBrowser {
    @Test
    void aGateIsCopiedToTheNextPlaceWithRoomAndUndoneWithOnePress() {
        go(Room.GATES);
        press("Copy G1");
        waitForVersion(2);
        assertThat(text())
                .containsPattern("\"id\": \"G2\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"\\d+'")
                .contains("\"G2\": {");
        assertThat(css("#numbers").getText()).contains("Opening and hand of G2");
        press("Undo");
        waitForVersion(3);
        assertThat(text()).doesNotContain("\"G2\"");
    }

    @Test
    void aRunIsCopiedClearOfTheFirst() {
        go(Room.LINE);
        press("Copy R1");
        waitForVersion(2);
        assertThat(text())
                .contains("\"id\": \"R2\"")
                .contains("\"start\": { \"east\": \"0\\\"\", \"north\": \"-40'\" }");
    }

    @Test
    void aBuildIsKeptUnderANameAndUsedInAnotherJob() {
        go(Room.GATES);
        form("Keep how G1 is made, under a name").findElement(By.name("name")).sendKeys("Lane gate");
        press("Keep build");
        waitUntil(
                "[...document.querySelectorAll('summary')].some(one => one.textContent.startsWith('Make G1 as one'))");
        assertThat(store.open(job.id()).orElseThrow().version()).isEqualTo(1);
        job = store.create("Kiln yard", plumbleaf.web.Trial.yard(), "you");
        go(Room.GATES);
        WebElement form = form("Make G1 as one of your own builds");
        new Select(form.findElement(By.name("name"))).selectByVisibleText("Lane gate");
        press("Build it so");
        waitForVersion(2);
        assertThat(text()).contains("\"frame\": \"TUBE-2x2x0.083\"").contains("\"opening\": \"4'\"");
    }

    @Test
    void aJobInMillimetersShowsAndTakesMillimeters() {
        go(Room.GATES);
        press("Millimeters");
        waitForVersion(2);
        assertThat(value("gates[0].opening")).isEqualTo("1219 mm");
        assertThat(css("[data-number='G1.running']").getText()).endsWith("mm");
        type("gates[0].opening", "1270");
        waitForVersion(3);
        assertThat(text()).contains("\"opening\": \"1270 mm\"");
        press("Feet and inches");
        waitForVersion(4);
        assertThat(value("gates[0].opening")).isEqualTo("4' 2\"");
    }

    private void press(String words) {
        press(browser.findElement(By.xpath("//button[normalize-space(text())='" + words + "']")));
    }

    private WebElement form(String heading) {
        WebElement summary = browser.findElement(By.xpath("//summary[normalize-space(text())=\"" + heading + "\"]"));
        press(summary);
        return summary.findElement(By.xpath("../form"));
    }
}
