package plumbleaf.browser.packed;

import static plumbleaf.browser.packed.ModuleBytes.folded;
import static plumbleaf.browser.packed.ModuleBytes.unfolded;

import java.util.Arrays;

/**
 * The module's functions and globals, in the order in which {@code FirstUse} numbered them: a function, then the last of those that it was the first to name. What an instruction
 * works on follows from the values that wait for it, so it is mostly not told.
 */
final class PackedCode {
    private static final int INT = -1;
    private static final int LONG = -2;
    private static final int FLOAT = -3;
    private static final int DOUBLE = -4;
    private static final int EMPTY = -64;
    private static final int END = 0x0B;

    private static final int OPS = 0x220;

    private final Telling telling;
    private final Waiting waiting;
    private final PackedTypes types;
    private final Bodies bodies;
    private final PackedFunctions functions;
    private final PackedGlobals globals;
    private final PackedLocals locals;
    private final NamedTypes named;
    private final PackedChecks checks;
    private final int importedFunctions;
    private final int[] codes = new int[OPS];
    private final int[] ops = new int[OPS];

    PackedCode(Odds odds, PackedTypes types, Imports imports, Bodies bodies, ModuleBytes code, byte[] globals) {
        this.types = types;
        this.bodies = bodies;
        telling = new Telling(odds, types, code);
        waiting = telling.waiting;
        importedFunctions = imports.functions();
        int functionsInAll = importedFunctions + odds.number(Part.COUNT, bodies.functions() - importedFunctions, 2, 0);
        int globalsInAll = imports.globals() + odds.number(Part.COUNT, bodies.globals() - imports.globals(), 2, 0);
        bodies.are(functionsInAll);
        functions = new PackedFunctions(telling, bodies, imports.functionTypes, functionsInAll);
        this.globals = new PackedGlobals(telling, this, globals, imports.globalTypes, globalsInAll);
        locals = new PackedLocals(telling);
        named = new NamedTypes(telling);
        checks = functions.checks;
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
        int[] all = functions.types();
        boolean[] done = new boolean[all.length];
        for (int lowest = importedFunctions; lowest < all.length; lowest++) {
            if (done[lowest]) continue;
            functions.begin(lowest);
            for (int f = functions.next(); f >= 0; f = functions.next()) {
                done[f] = true;
                body(f);
            }
        }
        return all;
    }

    private void body(int f) {
        int type = functions.typeOf(f);
        int[] given = types.params(type);
        int[] own = bodies.begin(f, given);
        if (checks.isKnown(f)) {
            checks.body(type);
            bodies.end(f, own, given.length);
            return;
        }
        waiting.clear();
        locals.begin(own, given.length, type);
        telling.before.begin(type, given.length);
        int start = telling.in.at;
        while (waiting.depth() >= 0) instruction();
        checks.learn(f, start);
        bodies.end(f, locals.end(), given.length);
    }

    void instruction() {
        Before before = telling.before;
        before.tellOp(telling.odds, waiting);
        int next = checks.isNext() ? PackedChecks.OP : telling.in.nextOp();
        int op = ops[telling.odds.number(Part.OP, codes[next])];
        if (op == PackedChecks.OP) {
            checks.call();
            locals.check();
            before.checked = true;
            return;
        }
        telling.in.putOp(op);
        locals.nothingWaits();
        int whole = Odds.mix(op, does(op));
        before.done(op, whole, locals.state(whole));
    }

    /**
     * Tells what it works on and does to the values that wait what it does.
     *
     * @return what it is known by afterwards beside its own code
     */
    private int does(int op) {
        int of;
        switch (op) {
            case 0x02, 0x03, 0x04, 0x1F -> block(op);
            case 0x05 -> waiting.otherwise();
            case END -> waiting.close();
            case 0x0C, 0x0D, 0xD5, 0xD6 -> {
                of = telling.plain(Part.LABEL, op);
                if (op == 0x0D || op == 0xD6) waiting.take();
                else if (op == 0xD5) {
                    int kind = waiting.take();
                    waiting.put(kind >= 0 ? kind & ~1 : kind);
                }
                return of;
            }
            case 0x0E -> {
                int many = telling.plain(Part.COUNT, op);
                for (int i = 0; i <= many; i++) telling.before.whole(telling.plain(Part.LABEL, op));
                waiting.take();
            }
            case 0x10 -> {
                of = functions.tell(op);
                called(functions.typeOf(of));
                return of;
            }
            case 0xD2 -> {
                of = functions.tell(op);
                bodies.refers(of);
                waiting.put(2 * functions.typeOf(of));
                return of;
            }
            case 0x14 -> {
                of = named.tell(op, waiting.referred(0));
                waiting.take();
                called(of);
                return of;
            }
            case 0x100, 0x101, 0x107, 0x108 -> {
                of = named.tell(op, -1);
                int takes = op == 0x100 ? types.fields(of).length : op == 0x107 ? 1 : 0;
                if (op == 0x108) takes = telling.plain(Part.COUNT, op);
                waiting.take(takes);
                waiting.put(2 * of);
                return of;
            }
            case 0x10B, 0x10C, 0x10D -> {
                of = named.tell(op, waiting.referred(1));
                waiting.take(2);
                waiting.put(wide(types.fields(of)[0]));
                return of;
            }
            case 0x10E -> {
                of = named.tell(op, waiting.referred(2));
                waiting.take(3);
                return of;
            }
            case 0x102, 0x103, 0x104, 0x105 -> {
                return named.field(op);
            }
            case 0x111 -> {
                named.tell(op, -1);
                named.tell(op, -1);
                waiting.take(5);
            }
            case 0x114, 0x115, 0x116, 0x117, 0xD0 -> {
                of = named.heap(op);
                if (op != 0xD0) waiting.take();
                if (op == 0x114 || op == 0x115) waiting.put(INT);
                else waiting.put(of < 0 ? of : 2 * of + (op == 0x116 ? 0 : 1));
                return of;
            }
            case 0x118, 0x119 -> {
                telling.in.put(telling.operand(Part.MISC, telling.in.ahead(0), op));
                telling.plain(Part.LABEL, op);
                telling.side(Part.TYPE, op);
                of = telling.side(Part.TYPE, op);
                telling.before.type = of;
                return of;
            }
            case 0x20, 0x21, 0x22 -> {
                return locals.tell(op);
            }
            case 0x23, 0x24 -> {
                of = globals.tell(op);
                if (op == 0x24) waiting.take();
                else {
                    waiting.put(globals.kindOf(of));
                    telling.before.globalType = globals.kindOf(of);
                }
                return of;
            }
            case 0x41 -> {
                of = telling.side(Part.I32, op);
                waiting.put(INT);
                return of;
            }
            case 0x42 -> {
                of = PackedConstants.wholeNumber(telling);
                waiting.put(LONG);
                return of;
            }
            case 0x43 -> {
                PackedConstants.shortFraction(telling);
                waiting.put(FLOAT);
            }
            case 0x44 -> {
                of = PackedConstants.fraction(telling);
                waiting.put(DOUBLE);
                return of;
            }
            case 0x08 -> {
                telling.plain(Part.MISC, op);
                waiting.take();
            }
            case 0x1B -> {
                waiting.take();
                int kind = waiting.take();
                waiting.take();
                waiting.put(kind);
            }
            case 0x40, 0x20A, 0x20B -> {
                for (int i = op == 0x20A ? 2 : 1; i > 0; i--) telling.in.put(0);
                stacked(op);
            }
            default -> {
                if (op >= 0x28 && op <= 0x3E) {
                    telling.plain(Part.MEMORY, op);
                    telling.plain(Part.MEMORY, op);
                }
                stacked(op);
            }
        }
        return 0;
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
        int said = telling.operand(Part.BLOCK, nextBlock(), op);
        if ((said & 1) != 0) {
            int of = said >> 1;
            telling.in.putSigned(of);
            yielded = types.results(of);
            taken = types.params(of).length;
        } else {
            int kind = unfolded(said >>> 1);
            telling.in.putValueType(kind);
            yielded = kind == EMPTY ? waiting.nothing : new int[] {kind};
        }
        if (op == 0x1F) {
            int catches = telling.plain(Part.COUNT, op);
            for (int i = 0; i < catches; i++) {
                int way = telling.operand(Part.MISC, telling.in.ahead(0), op);
                telling.in.put(way);
                if (way < 2) telling.plain(Part.MISC, op);
                telling.plain(Part.LABEL, op);
            }
        }
        waiting.open(taken, yielded);
    }

    private int nextBlock() {
        int of = telling.in.nextSigned();
        return of >= 0 ? 1 + 2 * of : 2 * folded(telling.in.nextValueType());
    }

    private void called(int type) {
        waiting.take(types.params(type).length);
        waiting.putAll(types.results(type));
    }

    static int wide(int kind) {
        return kind == -8 || kind == -9 ? INT : kind;
    }
}
