package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What the page unpacks is the compiled module, byte for byte; and it is kept, so that the page's next visit unpacks nothing. */
class UnpackedTest {
    private static final String COMPARE = """
            const done = arguments[0];
            (async () => {
                const bytes = async (name) => new Uint8Array(await (await fetch(name)).arrayBuffer());
                const { unpacked } = await import("/unpack.js");
                const made = unpacked(await bytes("/engine.packed"));
                const module = await bytes("/engine.wasm");
                const apart = made.findIndex((octet, at) => octet !== module[at]);
                return made.length === module.length && apart < 0 ? "same" : `${made.length} for ${module.length}, apart at ${apart}`;
            })().then(done, (fault) => done(fault.message));
            """;

    private static final String KEPT = """
            const done = arguments[0];
            (async () => {
                const { engineFrom } = await import("/engine.js");
                await engineFrom((how) => fetch("/engine.packed", how));
                const shelf = await caches.open("plumbleaf-engine");
                const [kept] = await shelf.keys();
                const module = new Uint8Array(await (await shelf.match(kept)).arrayBuffer());
                const engine = await engineFrom((how) => fetch("/engine.packed", how));
                return `${module.length === (await (await fetch("/engine.wasm")).arrayBuffer()).byteLength} ${typeof engine.design}`;
            })().then(done, (fault) => done(fault.message));
            """;

    @Test
    void theModuleIsPutTogetherByteForByte() throws IOException {
        try (EnginePage page = EnginePage.open()) {
            assertThat(page.run(COMPARE)).isEqualTo("same");
        }
    }

    @Test
    void itIsUnpackedOnce() throws IOException {
        try (EnginePage page = EnginePage.open()) {
            assertThat(page.run(KEPT)).isEqualTo("true function");
        }
    }
}
