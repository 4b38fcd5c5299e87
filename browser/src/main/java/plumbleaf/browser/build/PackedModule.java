package plumbleaf.browser.build;

import java.nio.ByteBuffer;
import java.util.zip.CRC32;

/**
 * A module packed for our own pages, a third smaller than by Brotli, which knows nothing of WebAssembly: each part of an instruction is told by how likely it is after what came
 * before, and what follows from the rest is not told. {@code unpack.js} puts it together again, byte for byte.
 */
final class PackedModule {
    /** Sections that are short and told as they are: imports, tables, tags, exports, start, and ours. */
    private static final int[] SHORT = {2, 4, 13, 7, 8, 0};

    private static final int HEAD = 8;

    private PackedModule() {}

    static byte[] of(byte[] module) {
        int[] from = new int[14];
        int[] to = new int[14];
        ModuleBytes in = new ModuleBytes(module, HEAD);
        while (in.at < in.size()) {
            int section = in.octet();
            int size = in.number();
            from[section] = in.at;
            in.at += size;
            to[section] = in.at;
        }
        Odds odds = new Odds();
        for (int section : SHORT) {
            odds.number(Part.COUNT, to[section] - from[section], 0, 0);
            in.at = from[section];
            plain(in, odds, to[section]);
        }
        PackedTypes types = new PackedTypes(in, odds);
        in.at = from[1];
        types.pack();
        new PackedCode(in, odds, types, Places.of(module, from)).pack();
        in.at = from[11];
        new PackedWords(in, odds).pack(to[11]);
        return summed(odds.finished());
    }

    /** With the sum at its end by which a page sees that it came whole: CRC-32, as in gzip (RFC 1952, section 8), highest octet first. */
    private static byte[] summed(byte[] packed) {
        CRC32 sum = new CRC32();
        sum.update(packed);
        return ByteBuffer.allocate(packed.length + Integer.BYTES)
                .put(packed)
                .putInt((int) sum.getValue())
                .array();
    }

    private static void plain(ModuleBytes in, Odds odds, int end) {
        int last = 0;
        int before = 0;
        while (in.at < end) {
            odds.context(Part.OCTET, last);
            odds.context(Part.OCTET, last, before);
            odds.context(Part.OCTET, 9, 9, 9);
            before = last;
            last = in.octet();
            odds.octet(Part.OCTET, last);
        }
    }
}
