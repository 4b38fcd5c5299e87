package plumbleaf.browser.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.browser.EnginePage;

/** An index past the end of an array, a wrong cast and an object that is missing are Java's own exceptions in a module that is compiled as the engine is, in a real browser. */
@Tag("browser")
class StrictTest {
    private static final String ASK = """
            const done = arguments[0];
            (async () => {
                const { engineOf } = await import("/engine.js");
                const faults = await engineOf(await (await fetch("/faults.wasm")).arrayBuffer());
                const places = ["0", "2", "3", "-1", "2147483647", "-2147483648"].map((place) => faults.at(place));
                const kinds = ["list", "text", "texts", "numbers", "seven"].map((name) => faults.kinds(name));
                return [...places, ...kinds, faults.missing()].join(", ");
            })().then(done, (fault) => done(fault.message));
            """;

    @Test
    void anIndexPastTheEndAWrongCastAndAMissingObjectAreJavasOwnExceptions() throws IOException {
        ToWebAssembly.compile(Faults.class.getName(), Path.of("target", "module"), "faults.wasm", Set.of());
        try (EnginePage page = EnginePage.open()) {
            assertThat(page.run(ASK))
                    .isEqualTo("0, 20, no such place, no such place, no such place, no such place, "
                            + "list of 1, text of 4, texts of 1, , , none none none none none none ");
        }
    }
}
