package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import plumbleaf.web.page.Room;

/** A remedy is applied by one press, what it cures goes, and one press more takes it back to the last letter. */
class RemediesInBrowserTest extends InBrowser {
    @Test
    void everyRemedyOfTheGateIsOnePressAndOneUndo() {
        go(Room.GATES);
        List<String> edits = offered();
        assertThat(edits).hasSizeGreaterThan(6);
        int version = 1;
        for (String edit : edits) {
            press(edit);
            waitForVersion(++version);
            assertThat(text()).as(edit).isNotEqualTo(job.document());
            css("[data-key=undo]").click();
            waitForVersion(++version);
            assertThat(text()).as(edit).isEqualTo(job.document());
        }
        assertThat(offered()).isEqualTo(edits);
    }

    @Test
    void aGateThatStrikesTheGroundClearsItOnceTheLeafIsRaised() {
        go(Room.GATES);
        assertThat(found()).contains("strikes the ground");
        press("gates[G1].leaf.bottomGap=");
        waitForVersion(2);
        assertThat(found()).doesNotContain("strikes the ground");
        css("[data-key=undo]").click();
        waitForVersion(3);
        assertThat(found()).contains("strikes the ground");
    }

    @Test
    void aGateThatSagsHoldsOnceItsFootingsAreDugDeeper() {
        go(Room.GATES);
        assertThat(found()).contains("the latch corner may drop");
        press("builds.G1.depth=");
        waitForVersion(2);
        assertThat(found()).doesNotContain("the latch corner may drop");
        assertThat(text()).contains("\"depth\": \"3' 6\\\"\"");
        css("[data-key=undo]").click();
        waitForVersion(3);
        assertThat(found()).contains("the latch corner may drop");
    }

    @Test
    void aQuestionOfARunIsAnsweredByOnePress() {
        String unsaid = job.document().replace(", \"taped\": \"level\"", "");
        assertThat(unsaid).isNotEqualTo(job.document());
        job = store.create("Taped how", unsaid, "you");
        go(Room.LINE);
        assertThat(found()).contains("How was the tape held on leg R1.1");
        press("runs[R1].legs[0].taped=slope");
        waitForVersion(2);
        assertThat(found()).doesNotContain("How was the tape held on leg R1.1");
        css("[data-key=undo]").click();
        waitForVersion(3);
        assertThat(text()).isEqualTo(unsaid);
    }

    private List<String> offered() {
        List<String> edits = new ArrayList<>();
        for (WebElement edit : browser.findElements(By.cssSelector("#numbers .remedies [name=edit]")))
            edits.add(String.valueOf(edit.getAttribute("value")));
        return edits;
    }

    /** @param edit how it begins */
    private void press(String edit) {
        WebElement form = browser.findElements(By.cssSelector("#numbers form[action$='/press']")).stream()
                .filter(one -> String.valueOf(one.findElement(By.name("edit")).getAttribute("value"))
                        .startsWith(edit))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No remedy " + edit));
        form.findElement(By.tagName("button")).click();
    }

    private String found() {
        return css("#numbers").getText();
    }
}
