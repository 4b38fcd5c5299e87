package plumbleaf.browser.packed;

/** The instructions that name nothing: how many values each takes, and the kind that it gives. WebAssembly Core Specification 2.0, section 5.4 and its proposals for the collector. */
final class PlainOps {
    private static final int INT = -1;
    private static final int LONG = -2;
    private static final int FLOAT = -3;
    private static final int DOUBLE = -4;

    private PlainOps() {}

    static int takes(int op) {
        if (op <= 0x01 || op == 0x0F || (op >= 0xC0 && op <= 0xC4)) return 0;
        if ((op >= 0x36 && op <= 0x3E) || op == 0xD3) return 2;
        if (op == 0x20A || op == 0x20B) return 3;
        return two(op) ? 2 : 1;
    }

    private static boolean two(int op) {
        return (op >= 0x46 && op <= 0x66 && op != 0x50)
                || (op >= 0x6A && op <= 0x78)
                || (op >= 0x7C && op <= 0x8A)
                || (op >= 0x92 && op <= 0x98)
                || (op >= 0xA0 && op <= 0xA6);
    }

    /** 0 for nothing. */
    static int gives(int op) {
        if (op <= 0x1A || (op >= 0x36 && op <= 0x3E) || (op >= 0xC0 && op <= 0xC4) || op == 0x20A || op == 0x20B)
            return 0;
        if (op >= 0x28 && op <= 0x35)
            return op == 0x28 || (op >= 0x2C && op <= 0x2F) ? INT : op == 0x2A ? FLOAT : op == 0x2B ? DOUBLE : LONG;
        if (op == 0x11A) return -18;
        if (op == 0x11B) return -17;
        if (op == 0x11C) return -20;
        if ((op >= 0x79 && op <= 0x8A) || (op >= 0xAC && op <= 0xB1) || op == 0xBD || (op >= 0x204 && op <= 0x207))
            return LONG;
        if ((op >= 0x8B && op <= 0x98) || (op >= 0xB2 && op <= 0xB6) || op == 0xBE) return FLOAT;
        if ((op >= 0x99 && op <= 0xA6) || (op >= 0xB7 && op <= 0xBB) || op == 0xBF) return DOUBLE;
        return INT;
    }
}
