package plumbleaf.browser.build;

import java.nio.ByteBuffer;
import java.util.zip.CRC32;

/** A file of the page with its sum as the last four octets, by which the page sees that it came whole: CRC-32, as in gzip (RFC 1952, section 8), highest octet first. */
final class Summed {
    /** A section that WebAssembly leaves to whoever wants one (Core Specification 2.0, section 5.5.3): its number, its length, its name; the sum is what it holds. */
    private static final byte[] SECTION = {0, 1 + 3 + Integer.BYTES, 3, 's', 'u', 'm'};

    private Summed() {}

    static byte[] of(byte[] bytes) {
        CRC32 sum = new CRC32();
        sum.update(bytes);
        return ByteBuffer.allocate(bytes.length + Integer.BYTES)
                .put(bytes)
                .putInt((int) sum.getValue())
                .array();
    }

    /** The same of a module, which stays one. */
    static byte[] module(byte[] module) {
        return of(ByteBuffer.allocate(module.length + SECTION.length)
                .put(module)
                .put(SECTION)
                .array());
    }
}
