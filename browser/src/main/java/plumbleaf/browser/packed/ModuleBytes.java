package plumbleaf.browser.packed;

/**
 * A WebAssembly module's bytes, front to back. While it is packed they are there; while it is unpacked they are nothing until they are put, so whoever goes over them asks for what
 * comes next, tells it or is told it, and puts it. A value's type is one number: twice a type's place, and one more where it may be missing; all others below zero.
 */
public final class ModuleBytes {
    private static final int MAY_BE_MISSING = -29;
    private static final int NEVER_MISSING = -28;

    private final byte[] bytes;
    public int at;

    public ModuleBytes(byte[] bytes, int at) {
        this.bytes = bytes;
        this.at = at;
    }

    public int size() {
        return bytes.length;
    }

    byte[] all() {
        return bytes;
    }

    public int octet() {
        return bytes[at++] & 255;
    }

    /** The octet so many ahead. */
    int ahead(int places) {
        return bytes[at + places] & 255;
    }

    void put(int places, int octet) {
        bytes[at + places] = (byte) octet;
    }

    void put(int octet) {
        bytes[at++] = (byte) octet;
    }

    void putAll(byte[] from, int start, int end) {
        System.arraycopy(from, start, bytes, at, end - start);
        at += end - start;
    }

    /** These before what was put last, from there on. */
    void insert(int place, byte[] octets, int many) {
        System.arraycopy(bytes, place, bytes, place + many, at - place);
        System.arraycopy(octets, 0, bytes, place, many);
        at += many;
    }

    /** LEB128, unsigned. */
    public int number() {
        int number = 0;
        int shift = 0;
        int octet;
        do {
            octet = octet();
            number |= (octet & 127) << shift;
            shift += 7;
        } while (octet > 127);
        return number;
    }

    int nextNumber() {
        int from = at;
        int number = number();
        at = from;
        return number;
    }

    void putNumber(int number) {
        int rest = number;
        while (rest >>> 7 != 0) {
            put((rest & 127) | 128);
            rest >>>= 7;
        }
        put(rest);
    }

    /** LEB128 in four octets, of a number that is known only after what follows it. */
    void putWide(int number) {
        for (int i = 0; i < 3; i++) put(((number >>> (7 * i)) & 127) | 128);
        put((number >>> 21) & 127);
    }

    /** LEB128, signed. */
    int signed() {
        int from = at;
        int number = number();
        int bits = 7 * (at - from);
        return bits < 32 && (ahead(-1) & 64) != 0 ? number | (-1 << bits) : number;
    }

    int nextSigned() {
        int from = at;
        int number = signed();
        at = from;
        return number;
    }

    void putSigned(int number) {
        int rest = number;
        while (rest < -64 || rest > 63) {
            put((rest & 127) | 128);
            rest >>= 7;
        }
        put(rest & 127);
    }

    public int valueType() {
        int said = signed();
        if (said != MAY_BE_MISSING && said != NEVER_MISSING) return said;
        int of = signed();
        if (of < 0) return of - (said == MAY_BE_MISSING ? 1000 : 2000);
        return of * 2 + (said == MAY_BE_MISSING ? 1 : 0);
    }

    int nextValueType() {
        int from = at;
        int type = valueType();
        at = from;
        return type;
    }

    void putValueType(int type) {
        if (type >= 0) {
            putSigned((type & 1) != 0 ? MAY_BE_MISSING : NEVER_MISSING);
            putSigned(type >> 1);
        } else if (type <= -2000) {
            putSigned(NEVER_MISSING);
            putSigned(type + 2000);
        } else if (type <= -1000) {
            putSigned(MAY_BE_MISSING);
            putSigned(type + 1000);
        } else putSigned(type);
    }

    /** An instruction's number; the two that announce another are 0x100 and 0x200 and that. */
    int nextOp() {
        int op = ahead(0);
        return op == 0xFB ? 0x100 + ahead(1) : op == 0xFC ? 0x200 + ahead(1) : op;
    }

    void putOp(int op) {
        if (op >= 0x100) put(op < 0x200 ? 0xFB : 0xFC);
        put(op & 255);
    }

    /** A whole number as one that is not below zero, small where it is near zero. */
    static int folded(int number) {
        return (number << 1) ^ (number >> 31);
    }

    static int unfolded(int folded) {
        return (folded >>> 1) ^ -(folded & 1);
    }
}
