package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import plumbleaf.web.page.Room;

/**
 * Every page against the rules of WCAG 2.2 A and AA that a program can check, by the axe-core engine, on paper and dark, wide and on a
 * phone. What no program can check (names that make sense, an order that does) is read by people.
 */
class AccessibilityTest extends InBrowser {
    @Test
    void noPageOfTheHouseBreaksARule() {
        keepABuild();
        assertThat(Axe.faults(
                        browser,
                        "http://127.0.0.1:" + port,
                        List.of(
                                "/",
                                "/new",
                                "/new/fence",
                                "/calendar",
                                "/yard",
                                "/yard/cut-list",
                                "/rates",
                                "/books",
                                "/builds",
                                "/letterhead",
                                "/trash",
                                "/field-book/",
                                "/guide/rooms",
                                "/guide?q=soil",
                                "/?find=nothing")))
                .isEmpty();
    }

    @Test
    void noPageOfAJobBreaksARule() {
        store.edit(
                job.id(),
                1,
                job.title(),
                text().replace("\"opening\": \"4'\"", "\"opening\": \"5'\""),
                "opening 5'",
                "Odo");
        List<String> pages = new ArrayList<>();
        for (Room room : Room.values()) pages.add(room.key());
        pages.addAll(
                List.of("history", "since/1", "together", "files", "customer", "stock/receiving", "walk/3", "walk/40"));
        assertThat(Axe.faults(browser, "http://127.0.0.1:" + port + "/jobs/" + job.id() + "/", pages))
                .isEmpty();
    }

    private void keepABuild() {
        go(Room.GATES);
        browser.executeScript("for (const one of document.querySelectorAll('details')) one.open = true");
        var form = browser.findElement(By.xpath("//form[input[@value='builds+keep+G1']]"));
        form.findElement(By.name("name")).sendKeys("Lane gate");
        form.findElement(By.tagName("button")).click();
        waitUntil("document.querySelector(\"[value='builds+use+G1']\") !== null");
    }
}
