package plumbleaf.browser.build;

import static plumbleaf.browser.build.ModuleBytes.folded;
import static plumbleaf.browser.build.Part.sided;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * The module's functions and globals, in the order in which {@link FirstUse} numbered them: a function, then the last of those that it was the first to name. What an instruction
 * works on follows from the values that wait for it, so it is mostly not told; a local's kind is what is first put into it.
 *
 * <p>One file for all that an instruction works on, long as it is: whatever kind that is, it is guessed from the same few that came before it, which change with every instruction.
 */
final class PackedCode {
    private static final int INT = -1;
    private static final int LONG = -2;
    private static final int FLOAT = -3;
    private static final int DOUBLE = -4;
    private static final int EMPTY = -64;
    private static final int END = 0x0B;

    /** The most frequent instructions, which take the fewest bits to begin with. */
    private static final int[] FIRST = {0x20, 0x10, 0x102, 0x23, 0x21, 0x41, END, 0x22, 0x105, 0x14, 0x0D};

    private static final int OPS = 0x220;

    private final ModuleBytes in;
    private final Odds odds;
    private final PackedTypes types;
    private final int[] functionTypes;
    private final int[] globalTypes;
    private final int[] bodies;
    private final int[] globals;
    private final int importedFunctions;
    private final int importedGlobals;
    private final boolean[] named;
    private final Deque<Integer> pending = new ArrayDeque<>();
    private final Waiting waiting = new Waiting();
    private final int[] codes = new int[OPS];
    private int mostFunction;
    private int mostGlobal = 0;
    private int mostType = 0;
    private int lastFunctionType = 0;
    private int lastGlobalType = 0;

    private int[] ops = new int[6];
    private int[] whole = new int[5];
    private int lastType = 0;
    private int lastField = 0;
    private int fieldBefore = 0;
    private int lastFunction = 0;
    private int lastSet = 0;
    private int lastKept = 0;
    private int mostLocal = 0;
    private int[] localTypes = Waiting.NOTHING;
    private boolean[] localKnown = {};

    /** @param places where each function's body and each global begins; 0 for those imported */
    PackedCode(ModuleBytes in, Odds odds, PackedTypes types, Places places) {
        this.in = in;
        this.odds = odds;
        this.types = types;
        this.functionTypes = places.functionTypes;
        this.globalTypes = places.globalTypes;
        this.bodies = places.bodies;
        this.globals = places.globals;
        this.importedFunctions = places.importedFunctions;
        this.importedGlobals = places.importedGlobals;
        this.named = new boolean[bodies.length];
        this.mostFunction = importedFunctions;
        Arrays.fill(codes, -1);
        int next = 0;
        for (int op : FIRST) codes[op] = next++;
        for (int op = 0; op < OPS; op++) if (codes[op] < 0) codes[op] = next++;
    }

    void pack() {
        odds.number(Part.COUNT, bodies.length - importedFunctions, 2, 0);
        odds.number(Part.COUNT, globals.length - importedGlobals, 2, 0);
        boolean[] done = new boolean[bodies.length];
        for (int f = 0; f < importedFunctions; f++) {
            named[f] = true;
            done[f] = true;
        }
        for (int lowest = importedFunctions; lowest < bodies.length; lowest++) {
            if (done[lowest]) continue;
            mostFunction = Math.max(mostFunction, lowest + 1);
            if (!named[lowest]) known(lowest);
            while (!pending.isEmpty()) {
                int f = pending.pop();
                done[f] = true;
                body(f);
            }
        }
        if (mostGlobal != globals.length) throw new IllegalStateException("A global that nobody names");
    }

    private void body(int f) {
        in.at = bodies[f];
        int end = in.number();
        end += in.at;
        waiting.clear();
        ops = new int[ops.length];
        whole = new int[whole.length];
        lastSet = 0;
        int[] given = types.params(functionTypes[f]);
        localTypes = locals(given);
        localKnown = new boolean[localTypes.length];
        Arrays.fill(localKnown, 0, given.length, true);
        mostLocal = given.length;
        odds.context(Part.LOCALS, given.length);
        odds.context(Part.LOCALS, functionTypes[f], 1);
        odds.number(Part.LOCALS, localTypes.length - given.length);
        whole[1] = Odds.mix(12345, functionTypes[f]);
        while (waiting.depth() >= 0) instruction();
        for (int i = given.length; i < localTypes.length; i++) {
            if (localKnown[i]) continue;
            odds.context(Part.LOCAL_TYPE, 0);
            odds.number(Part.LOCAL_TYPE, sided(localTypes[i]));
        }
        if (in.at != end) throw new IllegalStateException("Function " + f + " does not end where it says");
    }

    private int[] locals(int[] given) {
        int[] all = given.clone();
        int groups = in.number();
        for (int i = 0; i < groups; i++) {
            int many = in.number();
            int type = in.valueType();
            if (i > 0 && all[all.length - 1] == type) throw new IllegalStateException("Locals alike told apart");
            int from = all.length;
            all = Arrays.copyOf(all, from + many);
            Arrays.fill(all, from, all.length, type);
        }
        return all;
    }

    private void instruction() {
        odds.context(Part.OP, ops[1], waiting.last(0), waiting.last(1));
        odds.context(Part.OP, ops[1], ops[2], ops[3], ops[4], ops[5]);
        int op = in.octet();
        if (op == 0xFB) op = 0x100 + in.octet();
        else if (op == 0xFC) op = 0x200 + in.number();
        odds.number(Part.OP, codes[op]);
        shift(Odds.mix(op, does(op)));
        System.arraycopy(ops, 1, ops, 2, 4);
        ops[1] = op;
    }

    private void shift(int one) {
        System.arraycopy(whole, 1, whole, 2, 3);
        whole[1] = one;
    }

    /** Tells what it works on and does to the values that wait what it does. @return what it is known by afterwards beside its own code */
    private int does(int op) {
        int of;
        switch (op) {
            case 0x02, 0x03, 0x04, 0x1F -> block(op);
            case 0x05 -> waiting.otherwise();
            case END -> waiting.close();
            case 0x0C, 0x0D, 0xD5, 0xD6 -> {
                of = operand(Part.LABEL, in.number(), op);
                if (op == 0x0D || op == 0xD6) waiting.take();
                else if (op == 0xD5) {
                    int kind = waiting.take();
                    waiting.put(kind >= 0 ? kind & ~1 : kind);
                }
                return of;
            }
            case 0x0E -> {
                int many = operand(Part.COUNT, in.number(), op);
                for (int i = 0; i <= many; i++) shift(operand(Part.LABEL, in.number(), op));
                waiting.take();
            }
            case 0x10 -> {
                of = function(op);
                called(functionTypes[of]);
                return of;
            }
            case 0xD2 -> {
                of = function(op);
                waiting.put(2 * functionTypes[of]);
                return of;
            }
            case 0x14 -> {
                of = type(op, waiting.referred(0));
                waiting.take();
                called(of);
                return of;
            }
            case 0x100, 0x101, 0x107, 0x108 -> {
                of = type(op, -1);
                int takes = op == 0x100 ? types.fields(of).length : op == 0x107 ? 1 : 0;
                if (op == 0x108) takes = operand(Part.COUNT, in.number(), op);
                waiting.take(takes);
                waiting.put(2 * of);
                return of;
            }
            case 0x10B, 0x10C, 0x10D -> {
                of = type(op, waiting.referred(1));
                waiting.take(2);
                waiting.put(wide(types.fields(of)[0]));
                return of;
            }
            case 0x10E -> {
                of = type(op, waiting.referred(2));
                waiting.take(3);
                return of;
            }
            case 0x102, 0x103, 0x104, 0x105 -> {
                return field(op);
            }
            case 0x111 -> {
                type(op, -1);
                type(op, -1);
                waiting.take(5);
            }
            case 0x114, 0x115, 0x116, 0x117, 0xD0 -> {
                of = heapType(op);
                if (op != 0xD0) waiting.take();
                if (op == 0x114 || op == 0x115) waiting.put(INT);
                else waiting.put(of < 0 ? of : 2 * of + (op == 0x116 ? 0 : 1));
                return of;
            }
            case 0x118, 0x119 -> {
                operand(Part.MISC, in.octet(), op);
                operand(Part.LABEL, in.number(), op);
                operand(Part.TYPE, sided(in.signed()), op);
                of = in.signed();
                operand(Part.TYPE, sided(of), op);
                lastType = of;
                return of;
            }
            case 0x20, 0x21, 0x22 -> {
                return local(op);
            }
            case 0x23, 0x24 -> {
                of = global(op);
                if (op == 0x24) waiting.take();
                else {
                    waiting.put(globalTypes[of]);
                    lastKept = globalTypes[of];
                }
                return of;
            }
            case 0x41 -> {
                of = in.signed();
                operand(Part.I32, folded(of) & 0xffffffffL, op);
                waiting.put(INT);
                return of;
            }
            case 0x42 -> {
                return wholeNumber();
            }
            case 0x43 -> {
                for (int i = 0; i < 4; i++) {
                    odds.context(Part.OCTET, i);
                    odds.octet(Part.OCTET, in.octet());
                }
                waiting.put(FLOAT);
            }
            case 0x44 -> {
                return fraction();
            }
            case 0x08 -> {
                operand(Part.MISC, in.number(), op);
                waiting.take();
            }
            case 0x1B -> {
                waiting.take();
                int kind = waiting.take();
                waiting.take();
                waiting.put(kind);
            }
            case 0x40, 0x20A, 0x20B -> {
                in.at += op == 0x20A ? 2 : 1;
                plain(op);
            }
            default -> {
                if (op >= 0x28 && op <= 0x3E) {
                    operand(Part.MEMORY, in.number(), op);
                    operand(Part.MEMORY, in.number(), op);
                }
                plain(op);
            }
        }
        return 0;
    }

    private void plain(int op) {
        waiting.take(PlainOps.takes(op));
        int gives = PlainOps.gives(op);
        if (gives != 0) waiting.put(gives);
    }

    private void block(int op) {
        if (op == 0x04) waiting.take();
        int from = in.at;
        int of = in.signed();
        int taken = 0;
        int[] yielded;
        if (of >= 0) {
            operand(Part.BLOCK, 1 + 2L * of, op);
            yielded = types.results(of);
            taken = types.params(of).length;
        } else {
            in.at = from;
            int kind = in.valueType();
            operand(Part.BLOCK, 2L * sided(kind), op);
            yielded = kind == EMPTY ? Waiting.NOTHING : new int[] {kind};
        }
        if (op == 0x1F) {
            int catches = operand(Part.COUNT, in.number(), op);
            for (int i = 0; i < catches; i++) {
                int way = operand(Part.MISC, in.octet(), op);
                if (way < 2) operand(Part.MISC, in.number(), op);
                operand(Part.LABEL, in.number(), op);
            }
        }
        waiting.open(taken, yielded);
    }

    private void called(int type) {
        waiting.take(types.params(type).length);
        waiting.putAll(types.results(type));
    }

    private static int wide(int kind) {
        return kind == -8 || kind == -9 ? INT : kind;
    }

    private int function(int op) {
        int f = in.number();
        if (f > mostFunction) throw new IllegalStateException("Functions are not in the order of their first use");
        operand(Part.FUNC, f == mostFunction ? 0 : f + 1, op);
        mostFunction = Math.max(mostFunction, f + 1);
        if (!named[f]) {
            odds.context(Part.FUNC_TYPE, waiting.last(0), op);
            odds.context(Part.FUNC_TYPE, waiting.last(0), waiting.last(1), op);
            odds.context(Part.FUNC_TYPE, whole[1], op);
            odds.context(Part.FUNC_TYPE, waiting.last(0), waiting.last(1), waiting.last(2));
            odds.context(Part.FUNC_TYPE, whole[1], whole[2]);
            known(f);
        }
        lastFunction = f;
        return f;
    }

    private void known(int f) {
        int type = functionTypes[f];
        odds.context(Part.FUNC_TYPE, 9, lastFunctionType);
        odds.number(Part.FUNC_TYPE, type == mostType ? 0 : type + 1);
        lastFunctionType = type;
        mostType = Math.max(mostType, type + 1);
        named[f] = true;
        pending.push(f);
    }

    private int global(int op) {
        int g = in.number();
        operand(Part.GLOBAL, g == mostGlobal ? 0 : g + 1, op);
        while (mostGlobal <= g) {
            int one = mostGlobal++;
            if (one >= importedGlobals) first(one, op);
        }
        return g;
    }

    /** A global where it is first named: its kind and what it begins with. */
    private void first(int g, int op) {
        int back = in.at;
        in.at = globals[g];
        odds.context(Part.GLOBAL_TYPE, whole[1]);
        odds.context(Part.GLOBAL_TYPE, whole[1], whole[2]);
        odds.context(Part.GLOBAL_TYPE, op, waiting.last(0));
        odds.context(Part.GLOBAL_TYPE, lastGlobalType);
        odds.context(Part.GLOBAL_TYPE, lastGlobalType, whole[1]);
        int type = in.valueType();
        lastGlobalType = type;
        globalTypes[g] = type;
        odds.number(Part.GLOBAL_TYPE, sided(type));
        odds.context(Part.GLOBAL_TYPE, type, 1);
        odds.flag(Part.GLOBAL_TYPE, in.octet());
        int[] keptOps = ops;
        int[] keptWhole = whole;
        int[] kept = {waiting.count(), waiting.depth(), lastType, lastField, lastFunction, lastKept};
        ops = new int[ops.length];
        whole = new int[whole.length];
        whole[1] = type;
        int depth = waiting.aside();
        waiting.put(type);
        while (waiting.depth() >= depth) instruction();
        ops = keptOps;
        whole = keptWhole;
        waiting.back(kept[0], kept[1]);
        lastType = kept[2];
        lastField = kept[3];
        lastFunction = kept[4];
        lastKept = kept[5];
        in.at = back;
    }

    /** @param guess the type of what it works on: often the very one, or what that is a kind of; below zero for none */
    private int type(int op, int guess) {
        int type = in.number();
        int up = 0;
        int above = guess;
        while (above >= 0 && above != type && up < 10) {
            above = types.above(above);
            up++;
        }
        boolean hit = above >= 0 && above == type;
        if (guess >= 0) {
            odds.context(Part.HIT, op, guess);
            odds.context(Part.HIT, op, whole[1], whole[2]);
            odds.context(Part.HIT, op, whole[1], guess);
            odds.number(Part.HIT, hit ? up : 11);
        }
        if (!hit) operand(Part.TYPE, sided(type), op);
        lastType = type;
        lastField = -1;
        return type;
    }

    private int heapType(int op) {
        int type = in.signed();
        operand(Part.TYPE, sided(type), op);
        lastType = type;
        lastField = -1;
        return type;
    }

    private int field(int op) {
        int type = type(op, waiting.referred(op == 0x105 ? 1 : 0));
        lastField = fieldBefore;
        int field = operand(Part.FIELD, in.number(), op);
        lastField = field;
        fieldBefore = field;
        waiting.take(op == 0x105 ? 2 : 1);
        if (op != 0x105) waiting.put(wide(types.fields(type)[field]));
        return type * 99 + field * 7777;
    }

    private int local(int op) {
        int local = in.number();
        operand(Part.LOCAL, local == mostLocal ? 0 : local + 1, op);
        mostLocal = Math.max(mostLocal, local + 1);
        if (!localKnown[local]) {
            localKnown[local] = true;
            kind(localTypes[local], op);
        }
        if (op != 0x20) waiting.take();
        if (op != 0x21) waiting.put(localTypes[local]);
        if (op != 0x20) lastSet = local;
        return local;
    }

    /** A local's kind where it is first named. */
    private void kind(int type, int op) {
        int put = waiting.last(0);
        boolean hit = op != 0x20 && type == (put >= 0 ? put | 1 : put);
        odds.context(Part.LOCAL_HIT, put, op);
        odds.context(Part.LOCAL_HIT, whole[1], op);
        odds.context(Part.LOCAL_HIT, op, 1, 1);
        odds.flag(Part.LOCAL_HIT, hit ? 1 : 0);
        if (hit) return;
        odds.context(Part.LOCAL_TYPE, put, op);
        odds.context(Part.LOCAL_TYPE, op, whole[1]);
        odds.context(Part.LOCAL_TYPE, op, whole[1], whole[2]);
        odds.context(Part.LOCAL_TYPE, op, lastFunction, 1, 1);
        odds.number(Part.LOCAL_TYPE, sided(type));
    }

    private int wholeNumber() {
        int known = 0;
        int octet;
        int n = 0;
        do {
            octet = in.octet();
            odds.context(Part.I64, n);
            odds.context(Part.I64, n, known);
            odds.context(Part.I64, n, known, whole[1]);
            odds.octet(Part.I64, octet);
            n++;
            known = Odds.mix(known, octet);
        } while (octet > 127);
        waiting.put(LONG);
        return known;
    }

    /** From its sign on. */
    private int fraction() {
        int known = 0;
        int before = 0;
        for (int i = 7; i >= 0; i--) {
            int octet = in.octetAt(in.at + i);
            odds.context(Part.F64, i, before);
            odds.context(Part.F64, i, known, 1, 1);
            odds.octet(Part.F64, octet);
            before = octet;
            known = Odds.mix(known, octet);
        }
        in.at += 8;
        waiting.put(DOUBLE);
        return known;
    }

    /** What the instruction names: how likely each is depends on what waits, and on what came before. */
    private int operand(int part, long value, int op) {
        int top = waiting.last(0);
        switch (part) {
            case Part.LOCAL -> {
                odds.context(part, op, top, mostLocal);
                odds.context(part, op, lastSet, ops[1], mostLocal);
            }
            case Part.FUNC -> {
                odds.context(part, op, top);
                odds.context(part, op, top, waiting.last(1));
                odds.context(part, lastFunction, op);
                odds.context(part, top, waiting.last(1), waiting.last(2), ops[1], ops[2]);
            }
            case Part.TYPE -> {
                odds.context(part, op, top);
                odds.context(part, op, lastKept);
                odds.context(part, op, whole[1]);
                odds.context(part, op, top, waiting.last(1));
            }
            case Part.FIELD -> {
                odds.context(part, op, lastType);
                odds.context(part, lastType, op, whole[1], whole[2]);
                odds.context(part, whole[1], whole[2], whole[3], lastType);
            }
            case Part.GLOBAL -> {
                odds.context(part, op, top);
                odds.context(part, op, ops[1]);
            }
            default -> {
                odds.context(part, op, top);
                odds.context(part, op, ops[1], ops[2], ops[3]);
            }
        }
        odds.number(part, value);
        return (int) value;
    }
}
