package plumbleaf.browser.build;

import java.util.Arrays;
import plumbleaf.browser.packed.ModuleBytes;
import plumbleaf.browser.packed.Odds;
import plumbleaf.browser.packed.PackedModule;
import plumbleaf.browser.packed.Unpacked;

/** Packs a module and adds the sum by which a page sees that it came whole. */
final class Packing {
    private static final int HEAD = 8;

    private Packing() {}

    static byte[] of(byte[] module) {
        byte[][] sections = new byte[PackedModule.SECTIONS][0];
        ModuleBytes in = new ModuleBytes(module, HEAD);
        while (in.at < in.size()) {
            int section = in.octet();
            int size = in.number();
            sections[section] = Arrays.copyOfRange(module, in.at, in.at + size);
            in.at += size;
        }
        Odds odds = new Odds(new byte[0]);
        PackedModule.tellSize(odds, module.length);
        PackedModule.tell(odds, sections, new Places(sections));
        byte[] packed = odds.finished();
        if (!Arrays.equals(module, Unpacked.of(packed)))
            throw new IllegalStateException("The compiler wrote the module otherwise than it is put together again");
        return Summed.of(packed);
    }
}
