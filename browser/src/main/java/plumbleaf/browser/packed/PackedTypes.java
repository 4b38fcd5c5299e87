package plumbleaf.browser.packed;

import java.util.Arrays;

/** The module's types: what each holds, and what is guessed of it. A kind of another begins with what that other holds, so that is hardly told again. */
final class PackedTypes {
    private static final int FUNCTION = 0x60;
    private static final int STRUCTURE = 0x5F;
    private static final int FIRST_KIND = 0x5E;
    private static final int TOGETHER = 0x4E;
    private static final int KIND_OF = 0x50;
    private static final int UNKNOWN = Integer.MIN_VALUE;

    private final int[] none = {};
    private final ModuleBytes in;
    private final Odds odds;
    private int count = 0;
    private int[] aboves = new int[1024];
    private int[][] params = new int[1024][];
    private int[][] results = new int[1024][];
    private int[][] fields = new int[1024][];
    private int last = 0;
    private int beforeLast = 0;
    private int lastAbove = 0;

    PackedTypes(ModuleBytes in, Odds odds) {
        this.in = in;
        this.odds = odds;
    }

    int count() {
        return count;
    }

    int[] params(int type) {
        return params[type];
    }

    int[] results(int type) {
        return results[type];
    }

    int[] fields(int type) {
        return fields[type];
    }

    /** What it is a kind of; below zero where of nothing. */
    int above(int type) {
        return aboves[type];
    }

    void tell() {
        int groups = odds.number(Part.COUNT, in.nextNumber(), 1, 0);
        in.putNumber(groups);
        for (int i = 0; i < groups; i++) {
            int members = odds.number(Part.TYPE_KIND, members(), 2, 0) - 1;
            if (members >= 0) {
                in.put(TOGETHER);
                in.putNumber(members);
            }
            for (int j = 0; j < Math.abs(members); j++) type();
        }
    }

    /** How many stand together and one; 0 for one that stands alone. */
    private int members() {
        if (in.ahead(0) != TOGETHER) return 0;
        int from = in.at++;
        int members = in.number() + 1;
        in.at = from;
        return members;
    }

    private void type() {
        odds.context(Part.TYPE_KIND, 3, last);
        odds.context(Part.TYPE_KIND, 3, last, beforeLast);
        int from = in.at;
        int said = odds.number(Part.TYPE_KIND, nextSaid());
        int kind = FIRST_KIND + said / 3;
        int ways = said % 3;
        int above = ways == 0 ? -2 : -1;
        in.at = from;
        if (ways > 0) {
            in.put(KIND_OF);
            in.put(ways - 1);
        }
        if (ways == 2) {
            odds.context(Part.TYPE_KIND, 4, said);
            odds.context(Part.TYPE_KIND, 4, said, lastAbove);
            odds.context(Part.TYPE_KIND, 4, last, beforeLast);
            above = odds.number(Part.TYPE_KIND, in.nextNumber());
            in.putNumber(above);
            lastAbove = above;
        }
        in.put(kind);
        beforeLast = last;
        last = said;
        if (count == aboves.length) grow();
        int own = count++;
        aboves[own] = above;
        boolean isFunction = kind == FUNCTION;
        params[own] = isFunction ? list(1, above < 0 ? none : params[above]) : none;
        results[own] = isFunction ? list(7, above < 0 ? none : results[above]) : none;
        fields[own] = isFunction ? none : kind == STRUCTURE ? fields(said, above) : element();
    }

    private int nextSaid() {
        int kind = in.octet();
        int ways = 0;
        if (kind == KIND_OF) {
            ways = 1 + in.number();
            if (ways == 2) in.number();
            kind = in.octet();
        }
        return (kind - FIRST_KIND) * 3 + ways;
    }

    private void grow() {
        int more = count * 2;
        aboves = Arrays.copyOf(aboves, more);
        params = grown(params, more);
        results = grown(results, more);
        fields = grown(fields, more);
    }

    private static int[][] grown(int[][] all, int more) {
        int[][] grown = new int[more][];
        for (int i = 0; i < all.length; i++) grown[i] = all[i];
        return grown;
    }

    private int[] element() {
        int of = part(22, 0, UNKNOWN);
        changes(of);
        return new int[] {of};
    }

    private int[] fields(int said, int above) {
        int[] of = above < 0 ? none : fields[above];
        odds.context(Part.TYPE_KIND, 5, said);
        odds.context(Part.TYPE_KIND, 5, above);
        int[] all = new int[odds.number(Part.TYPE_KIND, in.nextNumber() - of.length) + of.length];
        in.putNumber(all.length);
        for (int i = 0; i < all.length; i++) {
            boolean told = i < of.length;
            all[i] = part(told ? 20 : 21, i > 0 ? all[i - 1] : 0, told ? of[i] : UNKNOWN);
            changes(all[i]);
        }
        return all;
    }

    private void changes(int type) {
        odds.context(Part.TYPE_KIND, 6, type);
        in.put(odds.flag(Part.TYPE_KIND, in.ahead(0)));
    }

    private int[] list(int place, int[] of) {
        odds.context(Part.TYPE_KIND, 7, place, beforeLast);
        odds.context(Part.TYPE_KIND, 7, place, of.length);
        int[] all = new int[odds.number(Part.TYPE_KIND, in.nextNumber())];
        in.putNumber(all.length);
        for (int i = 0; i < all.length; i++) {
            int before = i > 0 ? all[i - 1] : all.length * 7777;
            all[i] = part(place + Math.min(i, 3), before, i < of.length ? of[i] : UNKNOWN);
        }
        return all;
    }

    private int part(int place, int before, int guess) {
        int type = told(place, before, guess, in.nextValueType());
        in.putValueType(type);
        return type;
    }

    private int told(int place, int before, int guess, int type) {
        if (guess != UNKNOWN) {
            odds.context(Part.TYPE_HIT, place);
            odds.context(Part.TYPE_HIT, 1, before);
            if (odds.flag(Part.TYPE_HIT, type == guess ? 1 : 0) == 1) return guess;
        }
        odds.context(Part.TYPE_PART, place, last, beforeLast);
        odds.context(Part.TYPE_PART, 5, place, lastAbove);
        return ModuleBytes.unfolded(odds.number(Part.TYPE_PART, ModuleBytes.folded(type)));
    }
}
