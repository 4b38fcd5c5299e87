package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What the page unpacks is the compiled module, byte for byte; and it is kept, so that the page's next visit unpacks nothing. */
@Tag("browser")
class UnpackedTest {
    private static final String COMPARE = """
            const done = arguments[0];
            (async () => {
                const bytes = async (name) => new Uint8Array(await (await fetch(name)).arrayBuffer());
                const { unpacked } = await import("/engine.js");
                const made = await unpacked(await bytes("/engine.packed"), (file, how) => fetch("/" + file, how));
                const module = await bytes("/engine.wasm");
                const apart = made.findIndex((octet, at) => octet !== module[at]);
                return made.length === module.length && apart < 0 ? "same" : `${made.length} for ${module.length}, apart at ${apart}`;
            })().then(done, (fault) => done(fault.message));
            """;

    private static final String KEPT = """
            const done = arguments[0];
            (async () => {
                const { engineFrom } = await import("/engine.js");
                await engineFrom((file, how) => fetch("/" + file, how));
                const shelf = await caches.open("plumbleaf-engine");
                let kept = [];
                for (let i = 0; i < 1200 && !kept.length; i++) {
                    await new Promise((then) => setTimeout(then, 50));
                    kept = await shelf.keys();
                }
                if (kept.length !== 1) return `${kept.length} are kept`;
                const module = new Uint8Array(await (await shelf.match(kept[0])).arrayBuffer());
                const whole = new Uint8Array(await (await fetch("/engine.wasm")).arrayBuffer());
                // What is kept is compiled as it is read; what is unpacked is compiled whole.
                WebAssembly.compile = async () => { throw new Error("unpacked once more"); };
                const engine = await engineFrom((file, how) => fetch("/" + file, how));
                return `${module.length === whole.length} ${typeof engine.design}`;
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
