package plumbleaf.browser.packed;

/** What came before an instruction, from which it and what it works on are guessed: the last instructions by themselves and with what they worked on, and the last of each kind. */
final class Before {
    private static final int CHECKED = 0x400;

    int op1 = 0;
    int op2 = 0;
    int op3 = 0;
    int op4 = 0;
    int op5 = 0;
    int whole1 = 0;
    int whole2 = 0;
    int whole3 = 0;
    int type = 0;
    int function = 0;
    int globalType = 0;
    int localSet = 0;
    int mostLocal = 0;

    /** Whether what waits was checked: an object that is there. */
    boolean checked = false;

    /** What tells whether it will be: where it came from. */
    private int state = 0;

    /** A function begins: nothing came before, but of things that all functions name. */
    void begin(int functionType, int given) {
        begin(Odds.mix(12345, functionType));
        localSet = 0;
        mostLocal = given;
    }

    private void begin(int whole) {
        op1 = 0;
        op2 = 0;
        op3 = 0;
        op4 = 0;
        op5 = 0;
        whole1 = whole;
        whole2 = 0;
        whole3 = 0;
    }

    /** For what a global begins with, which is told in the midst of a function. */
    Before aside(int globalsType) {
        Before aside = new Before();
        aside.begin(globalsType);
        aside.type = type;
        aside.function = function;
        aside.globalType = globalType;
        return aside;
    }

    void whole(int one) {
        whole3 = whole2;
        whole2 = whole1;
        whole1 = one;
    }

    /** An instruction was told, with what it works on; a check before it is forgotten. */
    void done(int op, int whole, int state) {
        this.state = state;
        checked = false;
        whole(whole);
        op(op);
    }

    private void op(int op) {
        op5 = op4;
        op4 = op3;
        op3 = op2;
        op2 = op1;
        op1 = op;
    }

    /** The contexts of an instruction. */
    void tellOp(Odds odds, Waiting waiting) {
        int last = checked ? op1 + CHECKED : op1;
        odds.context(Part.OP, last, waiting.last(0), waiting.last(1));
        odds.context(Part.OP, last, op2, op3);
        odds.context(Part.OP, last, state, waiting.last(0), op2);
        odds.context(Part.OP, last, op2, op3, op4, op5);
    }

    /** The contexts of what an instruction names: how likely each is depends on what waits, and on what came before. */
    void tell(Odds odds, Waiting waiting, int part, int op) {
        int top = waiting.last(0);
        switch (part) {
            case Part.LOCAL -> {
                odds.context(part, op, top, mostLocal);
                odds.context(part, op, localSet, op1, mostLocal);
            }
            case Part.FUNC -> {
                odds.context(part, op, top);
                odds.context(part, op, top, waiting.last(1));
                odds.context(part, function, op);
                odds.context(part, top, waiting.last(1), waiting.last(2), op1, op2);
            }
            case Part.TYPE -> {
                odds.context(part, op, top);
                odds.context(part, op, globalType);
                odds.context(part, op, whole1);
                odds.context(part, op, top, waiting.last(1));
            }
            case Part.FIELD -> {
                odds.context(part, op, type);
                odds.context(part, type, op, whole1, whole2);
                odds.context(part, whole1, whole2, whole3, type);
            }
            case Part.GLOBAL -> {
                odds.context(part, op, top);
                odds.context(part, op, op1);
            }
            default -> {
                odds.context(part, op, top);
                odds.context(part, op, op1, op2, op3);
            }
        }
    }
}
