package plumbleaf.launcher;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;
import plumbleaf.web.Workspace;
import plumbleaf.web.fieldbook.BookFiles;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The field book in a real browser, and the server under it really gone: what is measured and changed then is not lost, and goes up. */
@Tag("browser")
class FieldBookInBrowserTest {
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    /** A pixel each: further than a finger goes before a browser takes it for scrolling. */
    private static final int FINGER_STEPS = 24;

    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder = Path.of("");

    private Workspace.Running server = new Workspace.Running(0, "", "", () -> {});
    private String job = "";
    private List<ChromeDriver> devices = List.of();

    @BeforeEach
    void start() throws IOException {
        server = Workspace.start(Workspace.Settings.alone(OwnPort.free(), store(), true));
        job = server.demoJob();
    }

    @AfterEach
    void end() {
        for (ChromeDriver each : devices) each.quit();
        server.end().run();
    }

    @Test
    void aJobTakenAlongIsMeasuredAndDesignedWithoutAServerAndGoesUpAfterTheTabWasKilled() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        cut();
        device.navigate().refresh();
        until(device, "document.body.dataset.page === 'measure'");
        keyIn(device, "3", "3", "ft");
        keyIn(device, "5", "ft", "2", "1/2");
        until(device, "document.querySelectorAll('.sketch .newest').length === 1");
        until(device, "document.getElementById('line').textContent.includes('1 change is kept on this device')");
        // Said with the shot itself, before any load is worked out.
        assertThat(text(device, "#closure")).contains("Not closed yet: read the rod back on the benchmark");
        page(device, "findings");
        until(device, "document.querySelectorAll('.findings li').length > 0");
        page(device, "drawings");
        until(device, "document.querySelectorAll('.sheets svg').length > 2");
        page(device, "crew");
        until(device, "/Crew sheet[^]*In this order/.test(document.getElementById('content').textContent)");
        page(device, "numbers");
        type(device, "gates[G1].opening", "fifty");
        until(
                device,
                "/opening/.test(document.querySelector(\"[data-path='gates[G1].opening'] + .problem\").textContent)");
        type(device, "gates[G1].opening", "4' 2\"");
        until(device, "document.getElementById('line').textContent.includes('2 changes')");

        kill(device);
        ChromeDriver again = device("phone");
        again.get(address() + "#" + job + "/numbers");
        until(again, "document.body.dataset.page === 'numbers'");
        assertThat(again.findElement(By.cssSelector("[data-path='gates[G1].opening']"))
                        .getDomProperty("value"))
                .isEqualTo("4' 2\"");

        long before = stored().version();
        back();
        again.executeScript("dispatchEvent(new Event('online'))");
        until(again, "document.getElementById('line').hidden");
        assertThat(stored().version()).isEqualTo(before + 2);
        assertThat(stored().document())
                .contains("\"opening\": \"4' 2\\\"\"", "\"station\": \"33'\"", "\"rod\": \"5' 2-1/2\\\"\"");
    }

    @Test
    void ofTwoDevicesThatChangeOneValueTheSecondIsAskedAndTheShotsOfBothAreKept() {
        ChromeDriver one = device("one");
        takeAlong(one);
        ChromeDriver two = device("two");
        takeAlong(two);
        cut();
        for (ChromeDriver each : List.of(one, two)) {
            page(each, "measure");
            keyIn(each, "3", each.equals(one) ? "3" : "4", "ft");
            keyIn(each, "4", "ft", each.equals(one) ? "9" : "8");
            page(each, "numbers");
        }
        type(one, "gates[G1].opening", "4' 1\"");
        type(two, "gates[G1].opening", "4' 3\"");
        back();
        // Whichever finds the signal first is kept; each tries by itself.
        for (ChromeDriver each : List.of(one, two))
            until(
                    each,
                    "document.getElementById('line').hidden"
                            + " || /needs? a word/.test(document.getElementById('line').textContent)");
        String document = stored().document();
        assertThat(document).contains("4' 9\\\"", "4' 8\\\"");
        boolean first = document.contains("\"opening\": \"4' 1\\\"\"");
        assertThat(document).contains(first ? "\"opening\": \"4' 1\\\"\"" : "\"opening\": \"4' 3\\\"\"");
        ChromeDriver second = first ? two : one;
        page(second, "away");
        String mine = first ? "4' 3\"" : "4' 1\"";
        String theirs = first ? "4' 1\"" : "4' 3\"";
        assertThat(text(second, "#content"))
                .contains("Waiting for a word", "Keep yours: " + mine, "Keep theirs: " + theirs);
        press(second, "[data-keep]");
        until(second, "document.getElementById('line').hidden");
        assertThat(stored().document())
                .contains("\"opening\": \"" + mine.replace("\"", "\\\"") + "\"")
                .doesNotContain("\"opening\": \"" + theirs.replace("\"", "\\\"") + "\"");
    }

    @Test
    void whatIsTypedWhileAnOlderValueGoesUpIsNoConflictWithOneself() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        page(device, "numbers");
        device.executeAsyncScript("""
                const [path, done] = arguments;
                const field = document.querySelector(`[data-path='${path}']`);
                let inches = 0;
                const one = () => {
                    field.value = `4' ${++inches}"`;
                    field.dispatchEvent(new Event("change"));
                    if (inches < 9) setTimeout(one, 60); else done();
                };
                one();
                """, "gates[G1].opening");
        untilStored("\"opening\": \"4' 9\\\"\"");
        until(device, "document.getElementById('line').hidden");
    }

    @Test
    void aChangeWhoseAnswerWasLostIsNeitherAskedAboutNorMadeTwice() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        long before = stored().version();
        device.executeScript("""
                const real = fetch;
                window.lost = 0;
                window.fetch = async (...asked) => {
                    const answer = await real(...asked);
                    if (asked[1]?.method === "POST" && window.lost++ % 2 === 0) throw new TypeError("the answer was lost");
                    return answer;
                };
                """);
        keyIn(device, "3", "3", "ft");
        keyIn(device, "5", "ft", "2", "1/2");
        until(device, "document.querySelectorAll('.sketch .newest').length === 1");
        until(device, "document.getElementById('line').hidden");
        // The next answer is heard, the one after it is lost again.
        page(device, "numbers");
        type(device, "gates[G1].leaf.bottomGap", "3-1/4\"");
        until(device, "window.lost === 2 && document.getElementById('line').hidden");
        type(device, "gates[G1].opening", "4' 2\"");
        until(device, "window.lost === 3 && document.getElementById('line').hidden");
        assertThat(stored().version()).isEqualTo(before + 3);
        assertThat(stored().document()).contains("\"opening\": \"4' 2\\\"\"").containsOnlyOnce("5' 2-1/2\\\"");
    }

    /** Everything arrives from the first change on, and no answer comes back, until {@code window.hears} is set. */
    private static final String DEAF = """
            const real = fetch;
            window.arrived = 0;
            window.hears = false;
            window.fetch = async (...asked) => {
                if (!window.hears && window.arrived) throw new TypeError("no answer came");
                const answer = await real(...asked);
                if (!window.hears && asked[1]?.method === "POST") {
                    window.arrived++;
                    throw new TypeError("no answer came");
                }
                return answer;
            };
            """;

    @Test
    void aValueTypedAnewAfterItsAnswerWasLostIsNoConflictWithOneself() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        page(device, "numbers");
        device.executeScript(DEAF);
        type(device, "gates[G1].opening", "4' 2\"");
        until(device, "window.arrived === 1");
        untilStored("\"opening\": \"4' 2\\\"\"");
        type(device, "gates[G1].opening", "4' 3\"");
        until(device, "document.getElementById('line').textContent.startsWith('No signal')");
        device.executeScript("window.hears = true; dispatchEvent(new Event('online'))");
        untilStored("\"opening\": \"4' 3\\\"\"");
        until(device, "document.getElementById('line').hidden");
    }

    /** A device that has measured the rod 5' 2-1/2" at 33', and heard no answer when that went up. */
    private ChromeDriver shotThatArrivesUnheard() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        device.executeScript(DEAF);
        keyIn(device, "3", "3", "ft");
        keyIn(device, "5", "ft", "2", "1/2");
        until(device, "window.arrived === 1");
        return device;
    }

    @Test
    void aShotReadAgainAfterItsAnswerWasLostIsOneShot() {
        ChromeDriver device = shotThatArrivesUnheard();
        String shot = text(device, "#photo-of");
        page(device, "numbers");
        type(device, "ground.shots[" + shot + "].rod", "5' 3\"");
        until(device, "document.getElementById('line').textContent.startsWith('No signal')");
        device.executeScript("window.hears = true; dispatchEvent(new Event('online'))");
        untilOneShotReads(device, "5' 3\"");
        until(device, "document.getElementById('line').hidden");
        assertThat(noted(device, "shots", "station", "33'", "id")).isEqualTo(shot);
    }

    @Test
    void aShotWhoseAnswerWasLostAndThatTheDeskChangedSinceIsOneShotAsTheDeskHasIt() {
        ChromeDriver device = shotThatArrivesUnheard();
        untilStored("\"rod\": \"5' 2-1/2\\\"\"");
        long came = stored().version();
        String shot = text(device, "#photo-of");
        photograph(device);
        somebodyChanges(document -> document.replace("5' 2-1/2\\\"", "5' 4\\\""));
        device.executeScript("window.hears = true; dispatchEvent(new Event('online'))");
        until(
                device,
                "document.getElementById('line').hidden && document.getElementById('photos')?.textContent === ''");
        assertThat(stored().version()).isEqualTo(came + 1);
        assertThat(noted(device, "shots", "station", "33'", "id")).isEqualTo(shot);
        assertThat(noted(device, "shots", "station", "33'", "rod")).isEqualTo("5' 4\"");
        device.get("http://127.0.0.1:" + server.port() + "/jobs/" + job + "/files");
        assertThat(device.getPageSource()).contains(shot + "-hole.png");
    }

    private void untilOneShotReads(ChromeDriver device, String rod) {
        new WebDriverWait(device, PATIENCE)
                .withMessage("one shot at 33' that reads " + rod)
                .until(page -> noted(device, "shots", "station", "33'", "rod").equals(rod));
    }

    @Test
    void whatNeedsAWordInTheBookIsAskedAboutInTheRoomsTooAndNotPutInUnasked() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        cut();
        page(device, "numbers");
        type(device, "gates[G1].opening", "4' 2\"");
        until(device, "document.getElementById('line').textContent.includes('1 change')");
        somebodyChangesTheOpening("4' 5\"");
        back();
        device.executeScript("dispatchEvent(new Event('online'))");
        until(device, "/needs a word/.test(document.getElementById('line').textContent)");
        // Another change that goes up meanwhile makes the one that is asked about no younger.
        type(device, "runs[R1].bottomGap", "2-1/2\"");
        untilStored("2-1/2");
        device.get("http://127.0.0.1:" + server.port() + "/jobs/" + job + "/gates");
        until(device, "document.getElementById('conflict')");
        assertThat(text(device, "#conflict")).contains("4' 2\"");
        assertThat(stored().document()).contains("\"opening\": \"4' 5\\\"\"");
    }

    private void somebodyChangesTheOpening(String value) {
        somebodyChanges(document -> document.replaceFirst(
                "\"opening\": \"[^\n]*?\"(?=[,\\s])",
                Matcher.quoteReplacement("\"opening\": \"" + value.replace("\"", "\\\"") + "\"")));
    }

    private void somebodyChanges(UnaryOperator<String> how) {
        try (Database database = Database.open(store())) {
            JobStore jobs = new JobStore(database, Clock.systemUTC());
            StoredJob now = jobs.open(new JobId(job)).orElseThrow();
            String changed = how.apply(now.document());
            assertThat(changed).isNotEqualTo(now.document());
            jobs.edit(now.id(), now.version(), now.title(), changed, "a value", "Odo");
        }
    }

    @Test
    void whatWasWorkedOutOfAnOlderJobIsMarkedAsSuchWhereTheEngineStops() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        cut();
        page(device, "numbers");
        device.executeScript("""
                const real = Worker.prototype.postMessage;
                Worker.prototype.postMessage = function (asked) {
                    if (asked.verb === "unpriced") this.dispatchEvent(new MessageEvent("message", { data: { number: asked.number, fault: "a belt broke" } }));
                    else real.call(this, asked);
                };
                """);
        type(device, "gates[G1].opening", "4' 2\"");
        until(device, "document.getElementById('working').textContent === 'stopped'");
        until(
                device,
                "document.getElementById('line').textContent.includes('The engine stopped at this job (a belt broke)')");
        assertThat(String.valueOf(device.executeScript("return document.body.dataset.step")))
                .isEqualTo("laid");
    }

    @Test
    void aDeviceThatWritesNothingMoreDownSaysSo() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        cut();
        page(device, "numbers");
        device.executeScript(
                "IDBObjectStore.prototype.put = () => { throw new DOMException('no room', 'QuotaExceededError'); }");
        type(device, "gates[G1].opening", "4' 2\"");
        until(
                device,
                "/1 change waits to be sent, and this device may lose it/.test(document.getElementById('line').textContent)");
    }

    @Test
    void aShotThatIsReadAgainWhileItGoesUpIsOneShot() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        device.executeScript("""
                const real = fetch;
                window.fetch = async (...asked) => {
                    if (asked[1]?.method === "POST") {
                        window.isGoing = true;
                        await new Promise((done) => setTimeout(done, 3000));
                    }
                    return real(...asked);
                };
                """);
        keyIn(device, "3", "3", "ft");
        keyIn(device, "5", "ft", "2", "1/2");
        until(device, "window.isGoing");
        String shot = text(device, "#photo-of");
        page(device, "numbers");
        type(device, "ground.shots[" + shot + "].rod", "5' 3\"");
        untilOneShotReads(device, "5' 3\"");
    }

    @Test
    void twoDevicesThatCountAlikeKeepTheirOwnLevelsShotsAndPhotos() {
        ChromeDriver one = device("one");
        takeAlong(one);
        ChromeDriver two = device("two");
        takeAlong(two);
        cut();
        for (ChromeDriver each : List.of(one, two)) {
            page(each, "measure");
            press(each, "#level");
            keyIn(each, "4", "ft", each.equals(one) ? "1" : "2");
            keyIn(each, "3", each.equals(one) ? "3" : "4", "ft");
            keyIn(each, "4", "ft", each.equals(one) ? "9" : "8");
            until(each, "document.querySelectorAll('.sketch .newest').length === 1");
        }
        String shot = text(one, "#photo-of");
        assertThat(text(two, "#photo-of")).as("both count alike").isEqualTo(shot);
        photograph(one);
        photograph(two);
        back();
        for (ChromeDriver each : List.of(one, two)) {
            each.executeScript("dispatchEvent(new Event('online'))");
            until(
                    each,
                    "document.getElementById('line').hidden && document.getElementById('photos')?.textContent === ''");
        }
        for (List<String> each : List.of(List.of("4' 1\"", "4' 9\""), List.of("4' 2\"", "4' 8\"")))
            assertThat(noted(one, "shots", "rod", each.get(1), "setup"))
                    .as("the level that a shot was read from")
                    .isEqualTo(noted(one, "setups", "backsight", each.get(0), "id"));
        List<String> shots =
                List.of(noted(one, "shots", "rod", "4' 9\"", "id"), noted(one, "shots", "rod", "4' 8\"", "id"));
        assertThat(shots).contains(shot).doesNotHaveDuplicates();
        one.get("http://127.0.0.1:" + server.port() + "/jobs/" + job + "/files");
        assertThat(one.getPageSource()).contains(shots.get(0) + "-hole.png", shots.get(1) + "-hole.png");
    }

    /** What the one item of a list of the ground's says under a key. */
    private String noted(ChromeDriver device, String list, String key, String value, String asked) {
        Object found = device.executeScript(
                "return JSON.parse(arguments[0]).ground[arguments[1]].filter((one) => one[arguments[2]] ==="
                        + " arguments[3]).map((one) => one[arguments[4]]).join(' and ')",
                stored().document(),
                list,
                key,
                value,
                asked);
        return String.valueOf(found);
    }

    @Test
    void aPostFollowsTheFingerTheEngineOnTheDeviceAnswersAndTheServerOnlyStores() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        cut();
        page(device, "drawings");
        until(device, "document.querySelector('.held-post')");
        WebElement post = device.findElement(By.cssSelector(".held-post"));
        String id = Objects.requireNonNull(post.getDomAttribute("data-of"));
        device.executeScript("arguments[0].scrollIntoView({ block: 'center' })", post);
        String drawn = drawing(device, id);
        double before = place(device, post);
        // A finger, not a mouse: down on the post, across it a step at a time, and up.
        double right = before + width(device, post) / 2;
        double down = middle(device, post);
        touch(device, "touchStart", right, down);
        for (int i = 1; i <= FINGER_STEPS; i++) touch(device, "touchMove", right + i, down);
        new WebDriverWait(device, PATIENCE)
                .withMessage("the post has gone with the finger")
                .until(page -> place(device, post) - before > FINGER_STEPS * 0.7);
        assertThat(place(device, post) - before)
                .as("pixels gone with the finger")
                .isLessThan(FINGER_STEPS * 1.1);
        assertThat(drawing(device, id))
                .as("the run as the engine lays it out with the post there")
                .isNotEqualTo(drawn);
        // At rest the whole job is worked out.
        until(device, "/^Post " + id + " at .+: ./.test(document.getElementById('dragged').textContent)");
        assertThat(stored().document()).doesNotContain("\"set\"");

        device.executeCdpCommand("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
        until(device, "document.getElementById('line').textContent.includes('1 change is kept')");
        String station = Objects.requireNonNull(device.findElement(By.cssSelector(".held-post[data-of='" + id + "']"))
                .getDomAttribute("aria-valuetext"));
        assertThat(text(device, "#dragged")).startsWith("Post " + id + " at " + station + ": ");
        back();
        device.executeScript("dispatchEvent(new Event('online'))");
        until(device, "document.getElementById('line').hidden");
        assertThat(stored().document())
                .contains("\"id\": \"" + id + "\", \"station\": \"" + station.replace("\"", "\\\"") + "\"");
    }

    private static void touch(ChromeDriver device, String what, double x, double y) {
        device.executeCdpCommand(
                "Input.dispatchTouchEvent", Map.of("type", what, "touchPoints", List.of(Map.of("x", x, "y", y))));
    }

    private static double place(ChromeDriver device, WebElement part) {
        return measured(device, part, "box.left");
    }

    private static double width(ChromeDriver device, WebElement part) {
        return measured(device, part, "box.width");
    }

    private static double middle(ChromeDriver device, WebElement part) {
        return measured(device, part, "box.top + box.height / 2");
    }

    private static double measured(ChromeDriver device, WebElement part, String what) {
        Object said = device.executeScript("const box = arguments[0].getBoundingClientRect(); return " + what, part);
        return ((Number) Objects.requireNonNull(said)).doubleValue();
    }

    /** The strip of the run that the post is in. */
    private static String drawing(ChromeDriver device, String post) {
        return String.valueOf(device.executeScript(
                "return"
                        + " document.querySelector(`.held-post[data-of='${arguments[0]}']`).closest('svg').firstChild.innerHTML",
                post));
    }

    @Test
    void aPhotoOfAShotGoesUpWhenTheSignalIsBack() {
        ChromeDriver device = device("phone");
        takeAlong(device);
        cut();
        page(device, "measure");
        keyIn(device, "3", "3", "ft");
        keyIn(device, "5", "ft", "2", "1/2");
        until(device, "document.querySelectorAll('.sketch .newest').length === 1");
        String shot = text(device, "#photo-of");
        photograph(device);
        // What needs the signal says so where it is pressed, and what waits is not left behind.
        device.executeScript("Object.defineProperty(navigator, 'onLine', { get: () => false })");
        press(device, ".out");
        assertThat(text(device, "#line")).startsWith("Desk: that needs the signal.");
        device.executeScript("location.hash = ''");
        until(device, "document.querySelector('[data-drop]')");
        press(device, "[data-drop]");
        until(device, "/1 change and 1 photo did not go up/.test(document.getElementById('line').textContent)");
        // What a browser that is ended at once may not have written down.
        device.executeScript("localStorage.clear()");
        device.quit();
        back();
        ChromeDriver again = device("phone");
        // From the list of what is held, without the job being opened.
        again.get(address());
        until(again, "document.querySelector('.held-jobs') && !/not sent yet/.test(document.body.textContent)");
        assertThat(noted(again, "shots", "station", "33'", "rod")).isEqualTo("5' 2-1/2\"");
        again.get("http://127.0.0.1:" + server.port() + "/jobs/" + job + "/files");
        assertThat(again.getPageSource()).contains(shot + "-hole.png");
    }

    @Test
    void aShelfOfAnOlderMakeKeepsItsJobs() {
        ChromeDriver device = device("old");
        device.get(address() + "icon.svg");
        device.executeAsyncScript("""
                const done = arguments[0];
                const asked = indexedDB.open("plumbleaf-field-book", 1);
                asked.onupgradeneeded = () => asked.result.createObjectStore("jobs", { keyPath: "id" });
                asked.onsuccess = () => {
                    const passage = asked.result.transaction("jobs", "readwrite");
                    passage.objectStore("jobs").put({ id: "abc", title: "An older yard", version: "1", person: "you", takenAt: 0, document: "{}" });
                    passage.oncomplete = () => { asked.result.close(); done(); };
                };
                """);
        device.get(address());
        until(device, "document.querySelectorAll('.held-jobs li').length === 1");
        assertThat(text(device, "#content")).contains("An older yard");
    }

    /** All that a device fetches to work out a job: the packed engine and the scripts that unpack and run it. */
    @Test
    void theEngineIsWithin500KilobytesAsItIsFetched() throws IOException {
        int bytes = 0;
        for (String file : BookFiles.OF_THE_ENGINE) bytes += served(file);
        assertThat(bytes).isBetween(200_000, 500_000);
    }

    /** The bytes that come over the line. */
    private int served(String file) throws IOException {
        HttpURLConnection asked =
                (HttpURLConnection) URI.create(address() + file).toURL().openConnection();
        asked.setRequestProperty("Accept-Encoding", "gzip");
        try (InputStream in = asked.getInputStream()) {
            return in.readAllBytes().length;
        }
    }

    /** A photo for the shot just taken. */
    private static void photograph(ChromeDriver device) {
        device.executeAsyncScript("""
                const done = arguments[0];
                const canvas = document.createElement("canvas");
                canvas.width = canvas.height = 8;
                canvas.getContext("2d").fillRect(2, 2, 4, 4);
                canvas.toBlob((blob) => {
                    const hand = new DataTransfer();
                    hand.items.add(new File([blob], "hole.png", { type: "image/png" }));
                    const input = document.getElementById("photo");
                    input.files = hand.files;
                    input.dispatchEvent(new Event("change"));
                    done();
                }, "image/png");
                """);
        until(device, "document.getElementById('photos').textContent.includes('1 photo waits')");
    }

    private String store() {
        return folder.resolve("jobs.db").toString();
    }

    private String address() {
        return "http://127.0.0.1:" + server.port() + "/field-book/";
    }

    private void cut() {
        server.end().run();
    }

    private void back() {
        server = Workspace.start(Workspace.Settings.alone(server.port(), store(), false));
    }

    private ChromeDriver device(String name) {
        ChromeDriver device = Chromium.open(folder.resolve(name));
        device.manage().timeouts().scriptTimeout(PATIENCE);
        List<ChromeDriver> all = new ArrayList<>(devices);
        all.add(device);
        devices = List.copyOf(all);
        return device;
    }

    /** As a battery that dies: the browser is given no time to write anything down. */
    private void kill(ChromeDriver device) {
        long process =
                ((Number) Objects.requireNonNull(device.getCapabilities().getCapability("goog:processID"))).longValue();
        ProcessHandle browser = ProcessHandle.of(process).orElseThrow();
        List<ProcessHandle> all = new ArrayList<>(browser.descendants().toList());
        all.add(browser);
        all.forEach(ProcessHandle::destroyForcibly);
        assertThatThrownBy(device::getTitle)
                .as("a browser that still answers may still write down what it has")
                .isInstanceOf(WebDriverException.class);
        devices = devices.stream().filter(each -> !each.equals(device)).toList();
        try {
            device.quit();
        } catch (WebDriverException gone) {
            // Nobody is there to be asked to go; what drove the browser ends all the same.
        }
    }

    private void takeAlong(ChromeDriver device) {
        device.get(address() + "#take=" + job);
        until(device, "document.body.dataset.step === 'priced' && document.body.dataset.kept === 'yes'");
    }

    private void page(ChromeDriver device, String page) {
        device.executeScript("location.hash = arguments[0]", job + "/" + page);
        until(device, "document.body.dataset.page === '" + page + "'");
    }

    private static void keyIn(ChromeDriver device, String... keys) {
        for (String key : keys) press(device, "[data-key='" + key + "']");
        press(device, "#next");
    }

    private static void press(ChromeDriver device, String selector) {
        device.executeScript("document.querySelector(arguments[0]).click()", selector);
    }

    private static void type(ChromeDriver device, String path, String value) {
        WebElement field = device.findElement(By.cssSelector("[data-path='" + path + "']"));
        device.executeScript(
                "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('change'))", field, value);
    }

    private static String text(ChromeDriver device, String selector) {
        return device.findElement(By.cssSelector(selector)).getText();
    }

    private static void until(ChromeDriver device, String condition) {
        new WebDriverWait(device, PATIENCE)
                .withMessage(condition)
                // A page that is being left answers no script.
                .ignoring(JavascriptException.class)
                .until(page -> Boolean.TRUE.equals(device.executeScript("return Boolean(" + condition + ")")));
    }

    private void untilStored(String text) {
        new WebDriverWait(devices.get(0), PATIENCE)
                .withMessage(text)
                .until(page -> stored().document().contains(text));
    }

    private StoredJob stored() {
        try (Database database = Database.open(store())) {
            return new JobStore(database, Clock.systemUTC())
                    .open(new JobId(job))
                    .orElseThrow();
        }
    }
}
