package plumbleaf.browser.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import plumbleaf.browser.packed.PageUnpacking;

/** What is packed is unpacked to the same bytes, by the classes that the page has too. */
class PackingTest {
    @Test
    void theEnginesModuleComesBackByteForByte() throws IOException {
        byte[] module = Files.readAllBytes(Path.of("target", "module", "engine.wasm"));
        byte[] back = unpacked(Packing.of(module));
        assertThat(Arrays.mismatch(module, back)).isEqualTo(-1);
    }

    @Test
    void itIsAFifthOfTheModule() throws IOException {
        long module = Files.size(Path.of("target", "module", "engine.wasm"));
        long packed = Files.size(Path.of("target", "classes", "plumbleaf", "browser", "engine.packed"));
        assertThat(packed).isBetween(module / 10, module * 21 / 100);
    }

    private static byte[] unpacked(byte[] packed) {
        PageUnpacking.room(packed.length);
        for (int at = 0; at < packed.length; at += 4) PageUnpacking.give(at, word(packed, at));
        byte[] made = new byte[PageUnpacking.unpack()];
        for (int at = 0; at < made.length; at++) made[at] = (byte) (PageUnpacking.word(at & ~3) >> (8 * (at & 3)));
        return made;
    }

    private static int word(byte[] from, int at) {
        int word = 0;
        for (int i = 3; i >= 0; i--) word = (word << 8) | (at + i < from.length ? from[at + i] & 0xFF : 0);
        return word;
    }
}
