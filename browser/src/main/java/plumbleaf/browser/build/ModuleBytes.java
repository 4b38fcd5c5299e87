package plumbleaf.browser.build;

/** Reads a WebAssembly module's bytes, front to back. A value's type is one number: twice a type's place, and one more where it may be missing; all others below zero. */
final class ModuleBytes {
    /** A reference to something that has no place of its own among the types, where it may be missing and where not, is said with a prefix. */
    private static final int MAY_BE_MISSING = -29;

    private static final int NEVER_MISSING = -28;

    private final byte[] bytes;
    int at;

    ModuleBytes(byte[] bytes, int at) {
        this.bytes = bytes;
        this.at = at;
    }

    int size() {
        return bytes.length;
    }

    int octet() {
        return bytes[at++] & 255;
    }

    /** One that was read, or is ahead. */
    int octetAt(int place) {
        return bytes[place] & 255;
    }

    /** LEB128, unsigned. */
    int number() {
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

    /** LEB128, signed. */
    int signed() {
        int number = 0;
        int shift = 0;
        int octet;
        do {
            octet = octet();
            number |= (octet & 127) << shift;
            shift += 7;
        } while (octet > 127);
        return shift < 32 && (octet & 64) != 0 ? number | (-1 << shift) : number;
    }

    int valueType() {
        int said = signed();
        if (said != MAY_BE_MISSING && said != NEVER_MISSING) return said;
        int of = signed();
        if (of < 0) return of - (said == MAY_BE_MISSING ? 1000 : 2000);
        return of * 2 + (said == MAY_BE_MISSING ? 1 : 0);
    }

    /** A whole number as one that is not below zero, small where it is near zero. */
    static int folded(int number) {
        return (number << 1) ^ (number >> 31);
    }
}
