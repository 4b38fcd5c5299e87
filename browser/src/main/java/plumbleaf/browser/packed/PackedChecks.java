package plumbleaf.browser.packed;

/**
 * Functions that only ask whether an object is there, one for each kind of object and all alike: whether a function is one is told where it is first named. From the second on its
 * body is not told, and a call of it is an instruction of its own, which names nothing: which one is called follows from what waits.
 */
final class PackedChecks {
    /** A number that no instruction has. */
    static final int OP = 0x21F;

    private static final int CALL = 0x10;
    private static final int NONE = -1;

    private final Telling telling;
    private final boolean[] checks;
    private final int[] ofKind;
    private int fault = NONE;
    private int tag = 0;

    PackedChecks(Telling telling, int functions, int kinds) {
        this.telling = telling;
        this.checks = new boolean[functions];
        this.ofKind = new int[kinds];
    }

    /** A function that is first named, of this type. */
    void tell(int function, int type, Bodies bodies) {
        int[] takes = telling.types.params(type);
        int[] gives = telling.types.results(type);
        if (takes.length != 1 || gives.length != 1 || takes[0] != gives[0] || takes[0] < 0) return;
        telling.odds.context(Part.CHECK, 0);
        telling.odds.context(Part.CHECK, 0, 0);
        if (telling.odds.flag(Part.CHECK, bodies.checks(function) ? 1 : 0) == 0) return;
        checks[function] = true;
        ofKind[takes[0] >> 1] = function;
    }

    /** Whether the next instruction is a call of the check for what waits; any answer while it is unpacked. */
    boolean isNext() {
        ModuleBytes in = telling.in;
        int kind = telling.waiting.last(0);
        if (in.ahead(0) != CALL || kind < 0 || ofKind[kind >> 1] == 0) return false;
        in.at++;
        boolean found = in.nextNumber() == ofKind[kind >> 1];
        in.at--;
        return found;
    }

    void call() {
        int kind = telling.waiting.take();
        telling.in.put(CALL);
        telling.in.putNumber(ofKind[kind >> 1]);
        telling.waiting.put(kind | 1);
    }

    boolean isKnown(int function) {
        return checks[function] && fault != NONE;
    }

    /** {@code get 0; block { branch where it is there; call what makes the exception; throw }}. */
    void body(int type) {
        ModuleBytes in = telling.in;
        in.put(0x20);
        in.put(0);
        in.put(0x02);
        in.putSigned(type);
        in.put(0xD6);
        in.put(0);
        in.put(CALL);
        in.putNumber(fault);
        in.put(0x08);
        in.putNumber(tag);
        in.put(0x0B);
        in.put(0x0B);
    }

    /** A body that was told: of the first check it says what makes the exception. */
    void learn(int function, int start) {
        if (!checks[function]) return;
        ModuleBytes in = telling.in;
        int end = in.at;
        in.at = start + 3;
        in.signed();
        in.at += 3;
        fault = in.number();
        in.at++;
        tag = in.number();
        in.at = end;
    }
}
