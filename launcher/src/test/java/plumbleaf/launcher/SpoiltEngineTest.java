package plumbleaf.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.JavascriptException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;
import plumbleaf.web.Workspace;

/** The engine that a device keeps is spoilt, or half of it: the page says so with the cure, loses nothing, and is whole again where there is a signal. */
@Tag("browser")
class SpoiltEngineTest {
    private static final Duration PATIENCE = Duration.ofMinutes(2);

    /** Puts a file of the engine's on the device's shelf otherwise than it came, and forgets what was unpacked by it. */
    private static final String SPOIL = """
            const [file, how, done] = arguments;
            (async () => {
                const name = (await caches.keys()).find((one) => one.startsWith("plumbleaf-field-book-"));
                const shelf = await caches.open(name);
                const whole = new Uint8Array(await (await shelf.match("/field-book/" + file)).arrayBuffer());
                const spoilt = how === "half" ? whole.slice(0, whole.length / 2) : whole;
                if (how !== "half") spoilt[whole.length / 3 | 0] ^= 1;
                await shelf.put("/field-book/" + file, new Response(spoilt));
                await caches.delete("plumbleaf-engine");
            })().then(() => done("done"), (fault) => done(fault.message));
            """;

    @TempDir(cleanup = CleanupMode.NEVER)
    Path folder = Path.of("");

    private Workspace.Running server = new Workspace.Running(0, "", "", () -> {});
    private String address = "";

    @BeforeEach
    void start() throws IOException {
        server = Workspace.start(Workspace.Settings.alone(OwnPort.free(), store(), true));
        address = "http://127.0.0.1:" + server.port() + "/field-book/#" + server.demoJob();
    }

    @AfterEach
    void end() {
        server.end().run();
    }

    @Test
    void aWrongByteIsSaidWithoutASignalAndMendedWithOne() {
        spoiltAndMended("engine.packed", "wrong byte");
    }

    @Test
    void halfAnEngineIsSaidWithoutASignalAndMendedWithOne() {
        spoiltAndMended("engine.packed", "half");
    }

    @Test
    void aWrongByteInWhatUnpacksItIsSaidAndMendedAlike() {
        spoiltAndMended("unpack.wasm", "wrong byte");
    }

    private void spoiltAndMended(String file, String how) {
        ChromeDriver device = Chromium.open(folder.resolve("phone"));
        try {
            device.manage().timeouts().scriptTimeout(PATIENCE);
            device.get(address.replace("#", "#take="));
            until(device, "document.body.dataset.step === 'priced' && document.body.dataset.kept === 'yes'");
            assertThat(device.executeAsyncScript(SPOIL, file, how)).isEqualTo("done");
            int port = server.port();
            server.end().run();

            device.get("about:blank");
            device.get(address + "/numbers");
            until(device, "/spoilt|could not be fetched/.test(document.getElementById('line').textContent)");
            assertThat(String.valueOf(device.executeScript("return document.getElementById('line').textContent")))
                    .contains("Open this page once more where there is a signal", "What you changed is kept");

            server = Workspace.start(Workspace.Settings.alone(port, store(), false));
            device.get("about:blank");
            device.get(address + "/numbers");
            until(device, "document.body.dataset.step === 'priced'");
            assertThat(device.executeScript("return document.getElementById('line').hidden"))
                    .isEqualTo(true);

            // What took the spoilt one's place is kept: it works without a signal again.
            server.end().run();
            device.get("about:blank");
            device.get(address + "/findings");
            until(device, "document.body.dataset.step === 'priced'");
        } finally {
            device.quit();
        }
    }

    private String store() {
        return folder.resolve("jobs.db").toString();
    }

    private static void until(ChromeDriver device, String condition) {
        new WebDriverWait(device, PATIENCE)
                .withMessage(condition)
                .ignoring(JavascriptException.class)
                .until(page -> Boolean.TRUE.equals(device.executeScript("return Boolean(" + condition + ")")));
    }
}
