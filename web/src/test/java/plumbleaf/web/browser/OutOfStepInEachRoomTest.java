package plumbleaf.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import plumbleaf.web.page.Room;
import plumbleaf.web.store.StoredJob;

/** In every room alike: a change without a connection waits and is sent, and of two who change one value the second is asked. */
class OutOfStepInEachRoomTest extends InBrowser {
    /**
     * A value of a room.
     *
     * @param from how the job file says it
     * @param theirs how it says it after somebody else changed it
     * @param typed what is typed here
     * @param mine how the file says that
     */
    private record Value(Room room, String path, String from, String theirs, String typed, String mine) {}

    private static final List<Value> VALUES = List.of(
            new Value(
                    Room.GROUND,
                    "ground.shots[1].rod",
                    "\"rod\": \"5' 1-1/2\\\"\"",
                    "\"rod\": \"5' 2\\\"\"",
                    "5' 3",
                    "\"rod\": \"5' 3\""),
            new Value(
                    Room.LINE,
                    "runs[0].infill",
                    "\"infill\": \"6'\", \"bottomGap\": \"2\\\"\"",
                    "\"infill\": \"5'\", \"bottomGap\": \"2\\\"\"",
                    "5' 6",
                    "\"infill\": \"5' 6\", \"bottomGap\": \"2\\\"\""),
            new Value(
                    Room.GATES,
                    "gates[0].opening",
                    "\"opening\": \"4'\"",
                    "\"opening\": \"5'\"",
                    "4' 6",
                    "\"opening\": \"4' 6\""),
            new Value(
                    Room.STRENGTH,
                    "site.wind.speed",
                    "\"speed\": \"105 mph\"",
                    "\"speed\": \"110 mph\"",
                    "120",
                    "\"speed\": \"120 mph\""),
            new Value(
                    Room.STOCK,
                    "builds.R1.hole",
                    "\"hole\": \"10\\\"\"",
                    "\"hole\": \"9\\\"\"",
                    "14",
                    "\"hole\": \"14\\\"\""),
            new Value(
                    Room.MONEY,
                    "money.margin",
                    "\"margin\": \"18%\"",
                    "\"margin\": \"19%\"",
                    "20",
                    "\"margin\": \"20%\""),
            new Value(
                    Room.PAPERS,
                    "packet[proposal]",
                    "\"version\": 1",
                    "\"version\": 1, \"packet\": [\"order\", \"proposal\", \"crew\"]",
                    "1",
                    "\"packet\": [\"proposal\""));

    @Test
    void everyRoomIsTried() {
        assertThat(VALUES).extracting(Value::room).containsExactly(Room.values());
    }

    @Test
    void withoutAConnectionAChangeIsKeptAndSentWhenItIsBack() {
        for (Value value : VALUES) {
            job = fresh();
            go(value.room());
            connection(false);
            type(value.path(), value.typed());
            waitUntil("document.getElementById('line').textContent.startsWith('No connection. 1 change is')");
            assertThat(value(value.path())).as(value.path()).isEqualTo(value.typed());
            connection(true);
            waitForVersion(2);
            assertThat(text()).as(value.path()).contains(value.mine());
            waitUntil("document.getElementById('line').hidden");
        }
    }

    @Test
    void ofTwoWhoChangeOneValueTheSecondSeesBothAndSays() {
        List<String> kept = new ArrayList<>();
        for (Value value : VALUES) {
            job = fresh();
            go(value.room());
            String changed = text().replaceFirst(Pattern.quote(value.from()), Matcher.quoteReplacement(value.theirs()));
            assertThat(changed).as(value.path()).isNotEqualTo(text());
            store.edit(job.id(), 1, job.title(), changed, value.path() + " by Odo", "Odo");
            type(value.path(), value.typed());
            waitUntil("document.getElementById('conflict') !== null");
            assertThat(css("#conflict").getText())
                    .contains("Odo: " + value.path(), value.typed())
                    .doesNotContain("not said");
            assertThat(text()).isEqualTo(changed);
            browser.findElement(By.xpath("//button[text()='Put mine in']")).click();
            waitForVersion(3);
            assertThat(text()).as(value.path()).contains(value.mine());
            kept.add(value.path());
        }
        assertThat(kept).hasSameSizeAs(Room.values());
    }

    @Test
    void onTheWalkAChangeWithoutAConnectionWaitsAndIsSent() {
        phone();
        go("/jobs/" + job.id() + "/walk/1");
        connection(false);
        type("site.access.dogs", "one, in the yard");
        waitUntil("document.getElementById('line').textContent.startsWith('No connection. 1 change is')");
        assertThat(value("site.access.dogs")).isEqualTo("one, in the yard");
        connection(true);
        waitForVersion(2);
        assertThat(text()).contains("\"dogs\": \"one, in the yard\"");
        waitUntil("document.getElementById('line').hidden");
    }

    @Test
    void onTheWalkTheSecondSeesWhatTheFirstSaidAndChooses() {
        phone();
        go("/jobs/" + job.id() + "/walk/1");
        String theirs = text().replace("\"site\": {", "\"site\": { \"access\": { \"dogs\": \"none\" },");
        assertThat(theirs).isNotEqualTo(text());
        store.edit(job.id(), 1, job.title(), theirs, "dogs by Odo", "Odo");
        type("site.access.dogs", "one, in the yard");
        waitUntil("document.getElementById('conflict') !== null");
        assertThat(css("#conflict").getText()).contains("Odo: dogs", "none", "one, in the yard");
        assertThat(text()).isEqualTo(theirs);
        press(browser.findElement(By.xpath("//button[text()='Keep theirs']")));
        waitUntil("document.getElementById('conflict') === null");
        assertThat(text()).isEqualTo(theirs);
        type("site.access.carry", "60'");
        waitForVersion(3);
        assertThat(text()).contains("\"dogs\": \"none\"", "\"carry\": \"60'\"");
    }

    /** The desk changes no job by itself: it reads, and says what waits on the device; see also QueueInBrowserTest. */
    @Test
    void theDeskKnowsOfAChangeThatWaitsWhenTheLineIsBack() {
        go(Room.GATES);
        connection(false);
        type("gates[0].opening", "4' 6");
        waitUntil("document.getElementById('line').textContent.startsWith('No connection. 1 change is')");
        browser.executeScript("window.fetch = () => Promise.reject(new TypeError('down'))");
        connection(true);
        go("/");
        assertThat(line()).contains("Changes wait on this device", "(1)");
        follow("#line a");
        waitForVersion(2);
        assertThat(text()).contains("\"opening\": \"4' 6\"");
    }

    private StoredJob fresh() {
        return store.open(demo.put()).orElseThrow();
    }
}
