package plumbleaf.browser.packed;

import static plumbleaf.browser.packed.ModuleBytes.folded;
import static plumbleaf.browser.packed.ModuleBytes.unfolded;

import java.util.Arrays;

/** A function's locals, numbered in the order of their first use. A local's kind is mostly what is first put into it. */
final class PackedLocals {
    private final Telling telling;
    private int[] kinds = {};
    private boolean[] known = {};
    private boolean[] checked = {};
    private int[] from = {};
    private int given = 0;

    /** The one that waits; below zero where what waits is none. */
    private int last = -1;

    PackedLocals(Telling telling) {
        this.telling = telling;
    }

    /** @param own the kinds of all, or while they are unpacked of those that are given to the function */
    void begin(int[] own, int given, int function) {
        Odds odds = telling.odds;
        odds.context(Part.LOCALS, given);
        odds.context(Part.LOCALS, function, 1);
        int locals = given + odds.number(Part.LOCALS, own.length - given);
        this.given = given;
        kinds = Arrays.copyOf(own, locals);
        known = new boolean[locals];
        checked = new boolean[locals];
        from = new int[locals];
        Arrays.fill(known, 0, given, true);
    }

    /**
     * The function is over.
     *
     * @return the kinds of all
     */
    int[] end() {
        for (int i = given; i < kinds.length; i++) {
            if (known[i]) continue;
            telling.odds.context(Part.LOCAL_TYPE, 0);
            kinds[i] = unfolded(telling.odds.number(Part.LOCAL_TYPE, folded(kinds[i])));
        }
        return kinds;
    }

    void nothingWaits() {
        last = -1;
    }

    /** What waits was asked whether it is there. */
    void check() {
        if (last >= 0) checked[last] = true;
    }

    /**
     * What is known of the local that waits: whether it was checked since something was put into it, and by which instruction that was.
     *
     * @param other where none waits
     */
    int state(int other) {
        return last < 0 ? other : 4 * from[last] + (checked[last] ? 1 : 2);
    }

    int tell(int op) {
        Before before = telling.before;
        Waiting waiting = telling.waiting;
        int local = telling.place(Part.LOCAL, before.mostLocal, op);
        before.mostLocal = Math.max(before.mostLocal, local + 1);
        if (!known[local]) {
            known[local] = true;
            kinds[local] = kind(kinds[local], op);
        }
        if (op != 0x20) {
            waiting.take();
            before.localSet = local;
            checked[local] = before.checked;
            from[local] = before.op1;
        }
        if (op != 0x21) {
            waiting.put(kinds[local]);
            last = local;
        }
        return local;
    }

    /** A local's kind where it is first named. */
    private int kind(int kind, int op) {
        Odds odds = telling.odds;
        Before before = telling.before;
        int put = telling.waiting.last(0);
        int guess = put >= 0 ? put | 1 : put;
        odds.context(Part.LOCAL_HIT, put, op);
        odds.context(Part.LOCAL_HIT, before.whole1, op);
        odds.context(Part.LOCAL_HIT, op, 1, 1);
        if (odds.flag(Part.LOCAL_HIT, op != 0x20 && kind == guess ? 1 : 0) == 1) return guess;
        odds.context(Part.LOCAL_TYPE, put, op);
        odds.context(Part.LOCAL_TYPE, op, before.whole1);
        odds.context(Part.LOCAL_TYPE, op, before.whole1, before.whole2);
        odds.context(Part.LOCAL_TYPE, op, before.function, 1, 1);
        return unfolded(odds.number(Part.LOCAL_TYPE, folded(kind)));
    }
}
