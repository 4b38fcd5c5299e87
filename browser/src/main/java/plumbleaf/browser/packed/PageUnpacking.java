package plumbleaf.browser.packed;

import org.teavm.interop.Export;

/** What the page asks of the module that unpacks: the packed octets go in and the unpacked come out in fours, the lowest first. */
public final class PageUnpacking {
    private static byte[] packed = new byte[0];
    private static byte[] made = new byte[0];

    private PageUnpacking() {}

    /** The compiler follows the program from here; the page asks for the rest by name. */
    public static void main(String[] none) {
        room(0);
        give(0, 0);
        unpack();
        word(0);
    }

    /** Room for so many octets. */
    @Export(name = "room")
    public static void room(int octets) {
        packed = new byte[octets + Integer.BYTES];
    }

    /** Four of them, from a place on. */
    @Export(name = "give")
    public static void give(int at, int four) {
        for (int i = 0; i < Integer.BYTES; i++) packed[at + i] = (byte) (four >> (8 * i));
    }

    /** @return how many octets the module has */
    @Export(name = "unpack")
    public static int unpack() {
        made = Unpacked.of(packed);
        return made.length;
    }

    /** Four octets of it; zeros past its end. */
    @Export(name = "word")
    public static int word(int at) {
        int four = 0;
        for (int i = Math.min(Integer.BYTES, made.length - at) - 1; i >= 0; i--)
            four = (four << 8) | (made[at + i] & 255);
        return four;
    }
}
