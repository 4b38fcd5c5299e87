package plumbleaf.browser.packed;

import java.util.Arrays;

/** The functions, numbered in the order of their first use, where each one's type is told. Their bodies follow: the last that was named first. */
final class PackedFunctions {
    final PackedChecks checks;
    private final Telling telling;
    private final Bodies bodies;
    private final int[] types;
    private final boolean[] named;
    private final int[] pending;
    private int pendings = 0;
    private int most;
    private int mostType = 0;
    private int lastType = 0;

    /** @param imported the types of those that are imported, which come first */
    PackedFunctions(Telling telling, Bodies bodies, int[] imported, int functions) {
        this.telling = telling;
        this.bodies = bodies;
        types = Arrays.copyOf(imported, functions);
        named = new boolean[functions];
        Arrays.fill(named, 0, imported.length, true);
        pending = new int[functions];
        most = imported.length;
        checks = new PackedChecks(telling, functions, telling.types.count());
    }

    int[] types() {
        return types;
    }

    int typeOf(int function) {
        return types[function];
    }

    /** One that nothing may have named yet is the next. */
    void begin(int function) {
        most = Math.max(most, function + 1);
        if (!named[function]) known(function);
    }

    /** The one whose body is told next; below zero for none. */
    int next() {
        return pendings > 0 ? pending[--pendings] : -1;
    }

    int tell(int op) {
        Odds odds = telling.odds;
        Before before = telling.before;
        Waiting waiting = telling.waiting;
        int function = telling.place(Part.FUNC, most, op);
        most = Math.max(most, function + 1);
        if (!named[function]) {
            odds.context(Part.FUNC_TYPE, waiting.last(0), op);
            odds.context(Part.FUNC_TYPE, waiting.last(0), waiting.last(1), op);
            odds.context(Part.FUNC_TYPE, before.whole1, op);
            odds.context(Part.FUNC_TYPE, waiting.last(0), waiting.last(1), waiting.last(2));
            odds.context(Part.FUNC_TYPE, before.whole1, before.whole2);
            known(function);
        }
        before.function = function;
        return function;
    }

    private void known(int function) {
        telling.odds.context(Part.FUNC_TYPE, 9, lastType);
        int told = telling.odds.number(Part.FUNC_TYPE, Telling.said(bodies.typeOf(function), mostType));
        int type = Telling.meant(told, mostType);
        types[function] = type;
        lastType = type;
        mostType = Math.max(mostType, type + 1);
        named[function] = true;
        checks.tell(function, type, bodies);
        pending[pendings++] = function;
    }
}
