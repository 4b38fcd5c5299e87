package plumbleaf.browser.packed;

import static plumbleaf.browser.packed.ModuleBytes.folded;
import static plumbleaf.browser.packed.ModuleBytes.unfolded;

import java.util.Arrays;

/**
 * The module's functions and globals, in the order in which {@code FirstUse} numbered them: a function, then the last of those that it was the first to name. What an instruction
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

    private static final int OPS = 0x220;

    private final ModuleBytes code;
    private final ModuleBytes globals;
    private final Odds odds;
    private final PackedTypes types;
    private final Bodies bodies;
    private final Imports imports;
    private final Waiting waiting = new Waiting();
    private final int[] codes = new int[OPS];
    private final int[] ops = new int[OPS];
    private ModuleBytes in;
    private int[] functionTypes = {};
    private int[] globalTypes = {};
    private boolean[] named = {};
    private int[] pending = {};
    private int pendings = 0;
    private int mostFunction;
    private int mostGlobal = 0;
    private int mostType = 0;
    private int lastFunctionType = 0;
    private int lastNewGlobal = 0;

    private Before before = new Before();
    private int[] localTypes = {};
    private boolean[] localKnown = {};

    PackedCode(Odds odds, PackedTypes types, Imports imports, Bodies bodies, ModuleBytes code, byte[] globals) {
        this.odds = odds;
        this.types = types;
        this.bodies = bodies;
        this.imports = imports;
        this.code = code;
        this.globals = new ModuleBytes(globals, 0);
        this.in = code;
        this.mostFunction = imports.functions();
        // The most frequent instructions take the fewest bits to begin with.
        int[] first = {0x20, 0x10, 0x102, 0x23, 0x21, 0x41, END, 0x22, 0x105, 0x14, 0x0D};
        Arrays.fill(codes, -1);
        int next = 0;
        for (int op : first) codes[op] = next++;
        for (int op = 0; op < OPS; op++) if (codes[op] < 0) codes[op] = next++;
        for (int op = 0; op < OPS; op++) ops[codes[op]] = op;
    }

    /** @return the types of all functions */
    int[] tell() {
        int importedFunctions = imports.functions();
        int importedGlobals = imports.globals();
        int functions = importedFunctions + odds.number(Part.COUNT, bodies.functions() - importedFunctions, 2, 0);
        int globalsInAll = importedGlobals + odds.number(Part.COUNT, bodies.globals() - importedGlobals, 2, 0);
        functionTypes = Arrays.copyOf(imports.functionTypes, functions);
        globalTypes = Arrays.copyOf(imports.globalTypes, globalsInAll);
        named = new boolean[functions];
        pending = new int[functions];
        globals.putNumber(globalsInAll - importedGlobals);
        bodies.are(functions);
        boolean[] done = new boolean[functions];
        for (int f = 0; f < importedFunctions; f++) {
            named[f] = true;
            done[f] = true;
        }
        for (int lowest = importedFunctions; lowest < functions; lowest++) {
            if (done[lowest]) continue;
            mostFunction = Math.max(mostFunction, lowest + 1);
            if (!named[lowest]) known(lowest);
            while (pendings > 0) {
                int f = pending[--pendings];
                done[f] = true;
                body(f);
            }
        }
        return functionTypes;
    }

    private void body(int f) {
        waiting.clear();
        int[] given = types.params(functionTypes[f]);
        int[] own = bodies.begin(f, given);
        odds.context(Part.LOCALS, given.length);
        odds.context(Part.LOCALS, functionTypes[f], 1);
        int locals = given.length + odds.number(Part.LOCALS, own.length - given.length);
        localTypes = Arrays.copyOf(own, locals);
        localKnown = new boolean[locals];
        Arrays.fill(localKnown, 0, given.length, true);
        before.begin(functionTypes[f], given.length);
        while (waiting.depth() >= 0) instruction();
        for (int i = given.length; i < locals; i++) {
            if (localKnown[i]) continue;
            odds.context(Part.LOCAL_TYPE, 0);
            localTypes[i] = unfolded(odds.number(Part.LOCAL_TYPE, folded(localTypes[i])));
        }
        bodies.end(f, localTypes, given.length);
    }

    private void instruction() {
        before.tellOp(odds, waiting);
        int op = ops[odds.number(Part.OP, codes[in.nextOp()])];
        in.putOp(op);
        before.whole(Odds.mix(op, does(op)));
        before.op(op);
    }

    /** Tells what it works on and does to the values that wait what it does. @return what it is known by afterwards beside its own code */
    private int does(int op) {
        int of;
        switch (op) {
            case 0x02, 0x03, 0x04, 0x1F -> block(op);
            case 0x05 -> waiting.otherwise();
            case END -> waiting.close();
            case 0x0C, 0x0D, 0xD5, 0xD6 -> {
                of = plain(Part.LABEL, op);
                if (op == 0x0D || op == 0xD6) waiting.take();
                else if (op == 0xD5) {
                    int kind = waiting.take();
                    waiting.put(kind >= 0 ? kind & ~1 : kind);
                }
                return of;
            }
            case 0x0E -> {
                int many = plain(Part.COUNT, op);
                for (int i = 0; i <= many; i++) before.whole(plain(Part.LABEL, op));
                waiting.take();
            }
            case 0x10 -> {
                of = function(op);
                called(functionTypes[of]);
                return of;
            }
            case 0xD2 -> {
                of = function(op);
                bodies.refers(of);
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
                if (op == 0x108) takes = plain(Part.COUNT, op);
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
                in.put(operand(Part.MISC, in.ahead(0), op));
                plain(Part.LABEL, op);
                side(Part.TYPE, op);
                of = side(Part.TYPE, op);
                before.type = of;
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
                    before.globalType = globalTypes[of];
                }
                return of;
            }
            case 0x41 -> {
                of = side(Part.I32, op);
                waiting.put(INT);
                return of;
            }
            case 0x42 -> {
                return wholeNumber();
            }
            case 0x43 -> {
                for (int i = 0; i < 4; i++) {
                    odds.context(Part.OCTET, i);
                    in.put(odds.octet(Part.OCTET, in.ahead(0)));
                }
                waiting.put(FLOAT);
            }
            case 0x44 -> {
                return fraction();
            }
            case 0x08 -> {
                plain(Part.MISC, op);
                waiting.take();
            }
            case 0x1B -> {
                waiting.take();
                int kind = waiting.take();
                waiting.take();
                waiting.put(kind);
            }
            case 0x40, 0x20A, 0x20B -> {
                for (int i = op == 0x20A ? 2 : 1; i > 0; i--) in.put(0);
                stacked(op);
            }
            default -> {
                if (op >= 0x28 && op <= 0x3E) {
                    plain(Part.MEMORY, op);
                    plain(Part.MEMORY, op);
                }
                stacked(op);
            }
        }
        return 0;
    }

    /** What it names as it is written: a number. */
    private int plain(int part, int op) {
        int told = operand(part, in.nextNumber(), op);
        in.putNumber(told);
        return told;
    }

    /** The same of one that may be below zero. */
    private int side(int part, int op) {
        int told = unfolded(operand(part, folded(in.nextSigned()), op));
        in.putSigned(told);
        return told;
    }

    private void stacked(int op) {
        waiting.take(PlainOps.takes(op));
        int gives = PlainOps.gives(op);
        if (gives != 0) waiting.put(gives);
    }

    private void block(int op) {
        if (op == 0x04) waiting.take();
        int taken = 0;
        int[] yielded;
        int said = operand(Part.BLOCK, nextBlock(), op);
        if ((said & 1) != 0) {
            int of = said >> 1;
            in.putSigned(of);
            yielded = types.results(of);
            taken = types.params(of).length;
        } else {
            int kind = unfolded(said >>> 1);
            in.putValueType(kind);
            yielded = kind == EMPTY ? waiting.nothing : new int[] {kind};
        }
        if (op == 0x1F) {
            int catches = plain(Part.COUNT, op);
            for (int i = 0; i < catches; i++) {
                int way = operand(Part.MISC, in.ahead(0), op);
                in.put(way);
                if (way < 2) plain(Part.MISC, op);
                plain(Part.LABEL, op);
            }
        }
        waiting.open(taken, yielded);
    }

    private int nextBlock() {
        int of = in.nextSigned();
        return of >= 0 ? 1 + 2 * of : 2 * folded(in.nextValueType());
    }

    private void called(int type) {
        waiting.take(types.params(type).length);
        waiting.putAll(types.results(type));
    }

    private static int wide(int kind) {
        return kind == -8 || kind == -9 ? INT : kind;
    }

    /** A place among those that are numbered by their first use, as it is told: 0 for the next new one. */
    private static int said(int place, int most) {
        return place == most ? 0 : place + 1;
    }

    private static int meant(int said, int most) {
        return said == 0 ? most : said - 1;
    }

    private int function(int op) {
        int f = meant(operand(Part.FUNC, said(in.nextNumber(), mostFunction), op), mostFunction);
        in.putNumber(f);
        mostFunction = Math.max(mostFunction, f + 1);
        if (!named[f]) {
            odds.context(Part.FUNC_TYPE, waiting.last(0), op);
            odds.context(Part.FUNC_TYPE, waiting.last(0), waiting.last(1), op);
            odds.context(Part.FUNC_TYPE, before.whole1, op);
            odds.context(Part.FUNC_TYPE, waiting.last(0), waiting.last(1), waiting.last(2));
            odds.context(Part.FUNC_TYPE, before.whole1, before.whole2);
            known(f);
        }
        before.function = f;
        return f;
    }

    private void known(int f) {
        odds.context(Part.FUNC_TYPE, 9, lastFunctionType);
        int type = meant(odds.number(Part.FUNC_TYPE, said(bodies.typeOf(f), mostType)), mostType);
        functionTypes[f] = type;
        lastFunctionType = type;
        mostType = Math.max(mostType, type + 1);
        named[f] = true;
        pending[pendings++] = f;
    }

    private int global(int op) {
        int g = meant(operand(Part.GLOBAL, said(in.nextNumber(), mostGlobal), op), mostGlobal);
        in.putNumber(g);
        while (mostGlobal <= g) {
            int one = mostGlobal++;
            if (one >= imports.globals()) first(one, op);
        }
        return g;
    }

    /** A global where it is first named: its kind and what it begins with. */
    private void first(int g, int op) {
        in = globals;
        odds.context(Part.GLOBAL_TYPE, before.whole1);
        odds.context(Part.GLOBAL_TYPE, before.whole1, before.whole2);
        odds.context(Part.GLOBAL_TYPE, op, waiting.last(0));
        odds.context(Part.GLOBAL_TYPE, lastNewGlobal);
        odds.context(Part.GLOBAL_TYPE, lastNewGlobal, before.whole1);
        int type = unfolded(odds.number(Part.GLOBAL_TYPE, folded(in.nextValueType())));
        in.putValueType(type);
        lastNewGlobal = type;
        globalTypes[g] = type;
        odds.context(Part.GLOBAL_TYPE, type, 1);
        in.put(odds.flag(Part.GLOBAL_TYPE, in.ahead(0)));
        Before kept = before;
        int count = waiting.count();
        int depth = waiting.depth();
        before = kept.aside(type);
        int aside = waiting.aside();
        waiting.put(type);
        while (waiting.depth() >= aside) instruction();
        before = kept;
        waiting.back(count, depth);
        in = code;
    }

    /** @param guess the type of what it works on: often the very one, or what that is a kind of; below zero for none */
    private int type(int op, int guess) {
        int type = in.nextNumber();
        boolean told = false;
        if (guess >= 0) {
            odds.context(Part.HIT, op, guess);
            odds.context(Part.HIT, op, before.whole1, before.whole2);
            odds.context(Part.HIT, op, before.whole1, guess);
            int up = odds.number(Part.HIT, up(guess, type));
            told = up < 11;
            if (told) {
                type = guess;
                for (int i = 0; i < up; i++) type = types.above(type);
            }
        }
        if (!told) type = unfolded(operand(Part.TYPE, folded(type), op));
        in.putNumber(type);
        before.type = type;
        return type;
    }

    /** How far above another a type is; 11 where it is not. */
    private int up(int guess, int type) {
        int above = guess;
        for (int up = 0; up <= 10 && above >= 0; up++) {
            if (above == type) return up;
            above = types.above(above);
        }
        return 11;
    }

    private int heapType(int op) {
        int type = side(Part.TYPE, op);
        before.type = type;
        return type;
    }

    private int field(int op) {
        int type = type(op, waiting.referred(op == 0x105 ? 1 : 0));
        int field = plain(Part.FIELD, op);
        waiting.take(op == 0x105 ? 2 : 1);
        if (op != 0x105) waiting.put(wide(types.fields(type)[field]));
        return type * 99 + field * 7777;
    }

    private int local(int op) {
        int local = meant(operand(Part.LOCAL, said(in.nextNumber(), before.mostLocal), op), before.mostLocal);
        in.putNumber(local);
        before.mostLocal = Math.max(before.mostLocal, local + 1);
        if (!localKnown[local]) {
            localKnown[local] = true;
            localTypes[local] = kind(localTypes[local], op);
        }
        if (op != 0x20) waiting.take();
        if (op != 0x21) waiting.put(localTypes[local]);
        if (op != 0x20) before.localSet = local;
        return local;
    }

    /** A local's kind where it is first named. */
    private int kind(int type, int op) {
        int put = waiting.last(0);
        int guess = put >= 0 ? put | 1 : put;
        odds.context(Part.LOCAL_HIT, put, op);
        odds.context(Part.LOCAL_HIT, before.whole1, op);
        odds.context(Part.LOCAL_HIT, op, 1, 1);
        if (odds.flag(Part.LOCAL_HIT, op != 0x20 && type == guess ? 1 : 0) == 1) return guess;
        odds.context(Part.LOCAL_TYPE, put, op);
        odds.context(Part.LOCAL_TYPE, op, before.whole1);
        odds.context(Part.LOCAL_TYPE, op, before.whole1, before.whole2);
        odds.context(Part.LOCAL_TYPE, op, before.function, 1, 1);
        return unfolded(odds.number(Part.LOCAL_TYPE, folded(type)));
    }

    private int wholeNumber() {
        int known = 0;
        int octet;
        int n = 0;
        do {
            odds.context(Part.I64, n);
            odds.context(Part.I64, n, known);
            odds.context(Part.I64, n, known, before.whole1);
            octet = odds.octet(Part.I64, in.ahead(0));
            in.put(octet);
            n++;
            known = Odds.mix(known, octet);
        } while (octet > 127);
        waiting.put(LONG);
        return known;
    }

    /** How many of its octets are not zero, from its sign on, and these. */
    private int fraction() {
        int zeros = 0;
        while (zeros < 8 && in.ahead(zeros) == 0) zeros++;
        odds.context(Part.F64, before.op1);
        odds.context(Part.F64, before.whole1, before.op1);
        zeros = odds.number(Part.F64, zeros);
        int known = zeros;
        for (int i = 7; i >= zeros; i--) {
            odds.context(Part.F64, i, zeros);
            odds.context(Part.F64, i, known);
            int octet = odds.octet(Part.F64, in.ahead(i));
            in.put(i, octet);
            known = Odds.mix(known, octet);
        }
        in.at += 8;
        waiting.put(DOUBLE);
        return known;
    }

    /** What the instruction names. */
    private int operand(int part, int value, int op) {
        before.tell(odds, waiting, part, op);
        return odds.number(part, value);
    }
}
