package plumbleaf.browser.packed;

import static plumbleaf.browser.packed.ModuleBytes.folded;
import static plumbleaf.browser.packed.ModuleBytes.unfolded;

import java.util.Arrays;

/** The globals, numbered in the order of their first use, where each one's kind and what it begins with are told: in the midst of the function that names it. */
final class PackedGlobals {
    private final Telling telling;
    private final PackedCode code;
    private final ModuleBytes globals;
    private final int imported;
    private final int[] kinds;
    private int most = 0;
    private int lastNew = 0;

    /** @param imported the kinds of those that are imported, which come first */
    PackedGlobals(Telling telling, PackedCode code, byte[] globals, int[] imported, int all) {
        this.telling = telling;
        this.code = code;
        this.globals = new ModuleBytes(globals, 0);
        this.imported = imported.length;
        kinds = Arrays.copyOf(imported, all);
        this.globals.putNumber(all - this.imported);
    }

    int kindOf(int global) {
        return kinds[global];
    }

    int tell(int op) {
        int global = telling.place(Part.GLOBAL, most, op);
        while (most <= global) {
            int one = most++;
            if (one >= imported) first(one, op);
        }
        return global;
    }

    private void first(int global, int op) {
        Odds odds = telling.odds;
        Before before = telling.before;
        Waiting waiting = telling.waiting;
        ModuleBytes in = telling.in;
        telling.in = globals;
        odds.context(Part.GLOBAL_TYPE, before.whole1);
        odds.context(Part.GLOBAL_TYPE, before.whole1, before.whole2);
        odds.context(Part.GLOBAL_TYPE, op, waiting.last(0));
        odds.context(Part.GLOBAL_TYPE, lastNew);
        odds.context(Part.GLOBAL_TYPE, lastNew, before.whole1);
        int kind = unfolded(odds.number(Part.GLOBAL_TYPE, folded(globals.nextValueType())));
        globals.putValueType(kind);
        lastNew = kind;
        kinds[global] = kind;
        odds.context(Part.GLOBAL_TYPE, kind, 1);
        globals.put(odds.flag(Part.GLOBAL_TYPE, globals.ahead(0)));
        int count = waiting.count();
        int depth = waiting.depth();
        telling.before = before.aside(kind);
        int aside = waiting.aside();
        waiting.put(kind);
        while (waiting.depth() >= aside) code.instruction();
        telling.before = before;
        waiting.back(count, depth);
        telling.in = in;
    }
}
