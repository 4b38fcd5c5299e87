package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.WindowType;
import plumbleaf.web.page.Room;
import plumbleaf.web.store.Maker;

/** A line that goes down, a page that is closed, a job that someone else changed meanwhile: no change is lost, none overwrites another unseen. */
class QueueInBrowserTest extends InBrowser {
    @Test
    void changesMadeWithoutAConnectionAreKeptAndSentInTheirOrder() {
        go(Room.GATES);
        connection(false);
        type("gates[0].opening", "4' 6");
        type("gates[0].leaf.bottomGap", "3 1/2");
        waitUntil("document.getElementById('line').textContent.startsWith('No connection. 2 changes are')");
        assertThat(value("gates[0].opening")).isEqualTo("4' 6");
        connection(true);
        waitForVersion(3);
        assertThat(text()).contains("\"opening\": \"4' 6\"").contains("\"bottomGap\": \"3 1/2\\\"\"");
        assertThat(css("#line").isDisplayed()).isFalse();
    }

    @Test
    void whatWaitsOutlivesTheClosedPageAndShowsInItsFieldUntilItIsSent() {
        go(Room.GATES);
        connection(false);
        type("gates[0].opening", "4' 6");
        waitUntil("document.getElementById('line').textContent.startsWith('No connection. 1 change is')");
        connection(true);
        browser.executeScript("addEventListener('pagehide', () => {}); window.stop();");
        go("/");
        go(Room.GATES);
        waitForVersion(2);
        assertThat(text()).contains("\"opening\": \"4' 6\"");
        assertThat(value("gates[0].opening")).isEqualTo("4' 6");
    }

    @Test
    void aChangeThatGoesFromAnotherRoomLeavesThatRoomOnThePage() {
        go(Room.GATES);
        browser.executeScript(waiting("gates[0].opening", "4' 6", "4'"));
        go(Room.LINE);
        waitForVersion(2);
        assertThat(text()).contains("\"opening\": \"4' 6\"");
        assertThat(css("#inside").getAttribute("data-at")).endsWith("/line");
        assertThat(waitingCount()).isZero();
    }

    @Test
    void aChangeOfSomeoneElseToTheSameFieldIsAskedAboutEvenAfterTheOwnPageWasClosed() {
        asksAbout("4' 6");
        assertThat(css("#conflict").getText()).contains("Odo: opening", "5'", "4' 6");
        assertThat(text()).contains("\"opening\": \"5'\"");
        browser.findElement(By.xpath("//button[text()='Put mine in']")).click();
        waitForVersion(3);
        assertThat(text()).contains("\"opening\": \"4' 6\"");
        assertThat(waitingCount()).isZero();
    }

    @Test
    void aChangeThatArrivedBeforeItsAnswerWasLostIsNotAskedAbout() {
        go(Room.GATES);
        browser.executeScript(waiting("gates[0].opening", "54", "4'"));
        String arrived = text().replace("\"opening\": \"4'\"", "\"opening\": \"54\\\"\"");
        store.edit(job.id(), 1, job.title(), arrived, "opening 54\"", "Odo");
        go(Room.GATES);
        waitUntil("!Object.keys(localStorage).some((key) => key.startsWith('plumbleaf.waiting.'))");
        assertThat(browser.findElements(By.id("conflict"))).isEmpty();
        assertThat(text()).isEqualTo(arrived);
    }

    @Test
    void aChangeThatCameUnheardIsNotAskedAboutThoughSomebodyChangedItSince() {
        go(Room.GATES);
        browser.executeScript(waiting("gates[0].opening", "4' 6", "4'"));
        String came = text().replace("\"opening\": \"4'\"", "\"opening\": \"4' 6\"");
        Maker page = Maker.of("you").sending("e0");
        store.edit(job.id(), 1, job.title(), came, "opening 4' 6", page);
        String since = came.replace("\"opening\": \"4' 6\"", "\"opening\": \"5'\"");
        store.edit(job.id(), 2, job.title(), since, "opening 5'", "Odo");
        go(Room.GATES);
        waitUntil("!Object.keys(localStorage).some((key) => key.startsWith('plumbleaf.waiting.'))");
        assertThat(browser.findElements(By.id("conflict"))).isEmpty();
        assertThat(text()).isEqualTo(since);
    }

    @Test
    void aValueThatOnlyBeginsLikeItIsAskedAbout() {
        asksAbout("5");
        assertThat(text()).contains("\"opening\": \"5'\"");
    }

    @Test
    void oneThatIsPutInBesideSomebodyElsesChangeTakesNoOtherAlongUnseen() {
        go(Room.GATES);
        browser.executeScript(waiting("gates[0].leaf.bottomGap", "3 1/2", value("gates[0].leaf.bottomGap")));
        browser.executeScript(waiting("gates[0].opening", "4' 6", "4'"));
        somebodyChangesTheOpening();
        go(Room.GATES);
        waitUntil("document.getElementById('conflict') !== null");
        assertThat(text()).contains("\"opening\": \"5'\"").contains("\"bottomGap\": \"3 1/2\\\"\"");
    }

    @Test
    void whoWasAskedIsAskedAgainAlsoWhereTheFirstAnswerDoesNotCome() {
        asksAbout("4' 6");
        browser.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", """
                const real = fetch;
                let lost = 0;
                window.fetch = (...asked) => (asked[1]?.method === "POST" && !lost++ ? Promise.reject(new TypeError("lost")) : real(...asked));
                """));
        go(Room.GATES);
        waitUntil("document.getElementById('conflict') !== null");
        assertThat(text()).contains("\"opening\": \"5'\"");
    }

    @Test
    void whatIsAskedStaysOnThePageWhileTheScreenIsTurnedAndShowsTheRoomAnew() {
        asksAbout("4' 6");
        phone();
        waitUntil("document.getElementById('inside').dataset.breadth === 'narrow'");
        type("gates[0].leaf.bottomGap", "3 1/2");
        assertThat(line()).contains("sent once you have said which of the two stays");
        browser.findElement(By.xpath("//button[text()='Put mine in']")).click();
        waitForVersion(4);
        assertThat(text()).contains("\"opening\": \"4' 6\"").contains("\"bottomGap\": \"3 1/2\\\"\"");
        assertThat(browser.findElements(By.id("conflict"))).isEmpty();
    }

    @Test
    void whatIsAskedIsAskedOnceMoreWhereTheFieldWasChangedMeanwhile() {
        asksAbout("4' 6");
        store.edit(
                job.id(),
                2,
                job.title(),
                text().replace("\"opening\": \"5'\"", "\"opening\": \"6'\""),
                "opening 6'",
                "Odo");
        browser.findElement(By.xpath("//button[text()='Put mine in']")).click();
        waitUntil("document.getElementById('conflict')?.textContent.includes(\"6'\")");
        assertThat(text()).contains("\"opening\": \"6'\"");
    }

    @Test
    void shotsThatWaitForTheFieldBookHoldNoChangeOfTheRoomsUp() {
        go(Room.GATES);
        browser.executeScript("""
                const person = document.querySelector('meta[name=person]').content;
                const at = '/jobs/JOB/ground/write-down';
                const shot = [['list', 'ground.shots'], ['own', 'S90'], ['run', 'R1'], ['station', "3'"], ['elevation', "1'"]];
                localStorage.setItem('plumbleaf.waiting.' + encodeURIComponent(person) + '.JOB', JSON.stringify([{ id: 'shot', at, path: 'ground.shots[S90]', base: 1, fields: shot }]));
                """.replace("JOB", job.id().text()));
        go(Room.GATES);
        waitUntil("document.getElementById('line').textContent.includes('1 change is kept in the field book')");
        type("gates[0].opening", "4' 6");
        waitForVersion(2);
        assertThat(text()).contains("\"opening\": \"4' 6\"").doesNotContain("S90");
        assertThat(line()).contains("1 change is kept in the field book");
        assertThat(waitingCount()).isEqualTo(1);
    }

    @Test
    void keepingTheirsGivesUpTheOwnChangeAndSendsTheRest() {
        go(Room.GATES);
        browser.executeScript(waiting("gates[0].opening", "4' 6", "4'"));
        browser.executeScript(waiting("gates[0].leaf.bottomGap", "3 1/2", value("gates[0].leaf.bottomGap")));
        somebodyChangesTheOpening();
        go(Room.GATES);
        waitUntil("document.getElementById('conflict') !== null");
        browser.findElement(By.xpath("//button[text()='Keep theirs']")).click();
        waitForVersion(3);
        assertThat(text()).contains("\"opening\": \"5'\"").contains("\"bottomGap\": \"3 1/2\\\"\"");
    }

    @Test
    void ofTwoPagesThatAskTheSameOneAnswerDoesAndBothShowWhatCameOfIt() {
        asksAbout("4' 6");
        String first = browser.getWindowHandle();
        browser.switchTo().newWindow(WindowType.TAB);
        go(Room.GATES);
        waitUntil("document.getElementById('conflict') !== null");
        assertThat(text()).contains("\"opening\": \"5'\"");
        browser.findElement(By.xpath("//button[text()='Put mine in']")).click();
        waitForVersion(3);
        browser.close();
        browser.switchTo().window(first);
        waitForVersion(3);
        assertThat(browser.findElements(By.id("conflict"))).isEmpty();
        assertThat(value("gates[0].opening")).isEqualTo("4' 6");
        assertThat(waitingCount()).isZero();
    }

    @Test
    void whatOnePageChangesTheOtherShows() {
        go(Room.GATES);
        String first = browser.getWindowHandle();
        browser.switchTo().newWindow(WindowType.TAB);
        go(Room.GATES);
        type("gates[0].opening", "4' 6");
        waitForVersion(2);
        browser.close();
        browser.switchTo().window(first);
        waitForVersion(2);
        assertThat(value("gates[0].opening")).isEqualTo("4' 6");
    }

    @Test
    void aChangeElsewhereInTheJobLeavesBothStanding() {
        go(Room.GATES);
        somebodyChangesTheOpening();
        // It stands there for six seconds, which a slow machine may need for the rest.
        browser.executeScript("""
                window.said = [];
                const line = document.getElementById('line');
                new MutationObserver(() => said.push(line.textContent)).observe(line, { childList: true });
                """);
        type("gates[0].leaf.bottomGap", "3 1/2");
        waitForVersion(3);
        assertThat(String.valueOf(browser.executeScript("return said.join('\\n')")))
                .containsPattern("Meanwhile: Odo: opening.* put in as well");
        assertThat(text()).contains("\"opening\": \"5'\"").contains("\"bottomGap\": \"3 1/2\\\"\"");
    }

    @Test
    void whatWasRefusedStaysInItsFieldWhileOtherChangesAreKept() {
        go(Room.GATES);
        type("gates[0].opening", "four feet");
        type("gates[0].leaf.bottomGap", "3 1/2");
        waitForVersion(2);
        waitUntil("document.querySelector('form.field.refused [name=value]')?.value === 'four feet'");
        assertThat(css("form.field.refused .problem").getText()).contains("length");
    }

    @Test
    void theDeskSaysWhichJobHasChangesThatWait() {
        go(Room.GATES);
        browser.executeScript(waiting("gates[0].opening", "4' 6", "4'"));
        go("/");
        assertThat(line()).contains("Changes wait on this device", "(1)");
        assertThat(css("#line a").getAttribute("href")).endsWith("/jobs/" + job.id());
    }

    /** An opening was typed without a connection, and somebody else typed another: the page that is opened next asks. */
    private void asksAbout(String opening) {
        go(Room.GATES);
        browser.executeScript(waiting("gates[0].opening", opening, "4'"));
        somebodyChangesTheOpening();
        go(Room.GATES);
        waitUntil("document.getElementById('conflict') !== null");
    }

    private void somebodyChangesTheOpening() {
        String changed = text().replace("\"opening\": \"4'\"", "\"opening\": \"5'\"");
        assertThat(changed).isNotEqualTo(text());
        store.edit(job.id(), 1, job.title(), changed, "opening 5'", "Odo");
    }

    /** As a page that was closed leaves it behind. */
    private String waiting(String path, String value, String was) {
        return """
                const person = document.querySelector('meta[name=person]').content;
                const shelf = 'plumbleaf.waiting.' + encodeURIComponent(person) + '.JOB';
                const edits = JSON.parse(localStorage.getItem(shelf) ?? '[]');
                edits.push({ id: 'e' + edits.length, at: '/jobs/JOB/gates/edit', path: PATH, base: 1, was: WAS, of: 'G1',
                    fields: [['path', PATH], ['unit', 'INCHES'], ['value', VALUE]] });
                localStorage.setItem(shelf, JSON.stringify(edits));
                """.replace("JOB", job.id().text())
                .replace("PATH", quoted(path))
                .replace("WAS", quoted(was))
                .replace("VALUE", quoted(value));
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\\\"") + '"';
    }

    private long waitingCount() {
        Object count = browser.executeScript("return localStorage.length");
        return count instanceof Number number ? number.longValue() : -1;
    }
}
