package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An engine that will not come leaves no thread behind, and whoever asked it hears so. */
@Tag("browser")
class BesideTest {
    private static final String FAILED = """
            const done = arguments[0];
            (async () => {
                let ended = 0;
                const terminate = Worker.prototype.terminate;
                Worker.prototype.terminate = function () { ended++; terminate.call(this); };
                const { engineBeside } = await import("/beside.js");
                const told = [];
                // As the thread says it where the packed engine came half.
                const engine = engineBeside(({ why, words }) => told.push(why + ": " + words));
                const waits = engine.ask("design", "{}").catch((fault) => fault.message);
                window.lastWorker.dispatchEvent(new MessageEvent("message", { data: { why: "spoilt", words: "it came half" } }));
                return [...told, await waits, await engine.ask("design", "{}").catch((fault) => fault.message), ended].join(" | ");
            })().then(done, (fault) => done("fault: " + fault.message));
            """;

    private static final String WATCHED = """
            const Real = Worker;
            window.Worker = class extends Real { constructor(...how) { super(...how); window.lastWorker = this; } };
            """;

    @Test
    void aThreadWithoutAnEngineIsEnded() throws IOException {
        try (EnginePage page = EnginePage.open()) {
            assertThat(page.run(WATCHED + FAILED)).isEqualTo("spoilt: it came half | it came half | it came half | 1");
        }
    }
}
