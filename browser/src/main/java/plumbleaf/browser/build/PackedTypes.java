package plumbleaf.browser.build;

import java.util.ArrayList;
import java.util.List;

/** The module's types: what each holds, and in packing them what is guessed of it. A kind of another begins with what that other holds, so that is hardly told again. */
final class PackedTypes {
    private static final int FUNCTION = 0x60;
    private static final int STRUCTURE = 0x5F;
    private static final int FIRST_KIND = 0x5E;
    private static final int TOGETHER = 0x4E;
    private static final int KIND_OF = 0x50;
    private static final int UNKNOWN = Integer.MIN_VALUE;
    private static final int[] NONE = {};

    private final List<Integer> aboves = new ArrayList<>();
    private final List<int[]> params = new ArrayList<>();
    private final List<int[]> results = new ArrayList<>();
    private final List<int[]> fields = new ArrayList<>();
    private final ModuleBytes in;
    private final Odds odds;
    private int last = 0;
    private int beforeLast = 0;
    private int lastAbove = 0;

    PackedTypes(ModuleBytes in, Odds odds) {
        this.in = in;
        this.odds = odds;
    }

    int[] params(int type) {
        return params.get(type);
    }

    int[] results(int type) {
        return results.get(type);
    }

    int[] fields(int type) {
        return fields.get(type);
    }

    /** What it is a kind of; below zero where of nothing. */
    int above(int type) {
        return aboves.get(type);
    }

    void pack() {
        int groups = in.number();
        odds.number(Part.COUNT, groups, 1, 0);
        for (int i = 0; i < groups; i++) {
            int members = -1;
            if (in.octetAt(in.at) == TOGETHER) {
                in.octet();
                members = in.number();
            }
            odds.number(Part.TYPE_KIND, members + 1, 2, 0);
            for (int j = 0; j < Math.abs(members); j++) type();
        }
    }

    private void type() {
        int kind = in.octet();
        int ways = 0;
        int above = -2;
        if (kind == KIND_OF) {
            ways = 1 + in.number();
            above = ways == 2 ? in.number() : -1;
            kind = in.octet();
        }
        int said = (kind - FIRST_KIND) * 3 + ways;
        odds.context(Part.TYPE_KIND, 3, last);
        odds.context(Part.TYPE_KIND, 3, last, beforeLast);
        odds.number(Part.TYPE_KIND, said);
        if (above >= 0) {
            odds.context(Part.TYPE_KIND, 4, said);
            odds.context(Part.TYPE_KIND, 4, said, lastAbove);
            odds.context(Part.TYPE_KIND, 4, last, beforeLast);
            odds.number(Part.TYPE_KIND, above);
            lastAbove = above;
        }
        beforeLast = last;
        last = said;
        aboves.add(above);
        params.add(kind == FUNCTION ? list(1, above < 0 ? NONE : params(above)) : NONE);
        results.add(kind == FUNCTION ? list(7, above < 0 ? NONE : results(above)) : NONE);
        fields.add(kind == FUNCTION ? NONE : kind == STRUCTURE ? fields(said, above) : element());
    }

    private int[] element() {
        int of = in.valueType();
        part(22, of, 0, UNKNOWN);
        changes(of);
        return new int[] {of};
    }

    private int[] fields(int said, int above) {
        int[] of = above < 0 ? NONE : fields(above);
        int[] all = new int[in.number()];
        odds.context(Part.TYPE_KIND, 5, said);
        odds.context(Part.TYPE_KIND, 5, above);
        odds.number(Part.TYPE_KIND, all.length - of.length);
        for (int i = 0; i < all.length; i++) {
            all[i] = in.valueType();
            boolean told = i < of.length;
            part(told ? 20 : 21, all[i], i > 0 ? all[i - 1] : 0, told ? of[i] : UNKNOWN);
            changes(all[i]);
        }
        return all;
    }

    private void changes(int type) {
        odds.context(Part.TYPE_KIND, 6, type);
        odds.flag(Part.TYPE_KIND, in.octet());
    }

    private int[] list(int place, int[] of) {
        int[] all = new int[in.number()];
        odds.context(Part.TYPE_KIND, 7, place, beforeLast);
        odds.context(Part.TYPE_KIND, 7, place, of.length);
        odds.number(Part.TYPE_KIND, all.length);
        for (int i = 0; i < all.length; i++) {
            all[i] = in.valueType();
            int before = i > 0 ? all[i - 1] : all.length * 7777;
            part(place + Math.min(i, 3), all[i], before, i < of.length ? of[i] : UNKNOWN);
        }
        return all;
    }

    private void part(int place, int type, int before, int guess) {
        if (guess != UNKNOWN) {
            odds.context(Part.TYPE_HIT, place);
            odds.context(Part.TYPE_HIT, 1, before);
            odds.flag(Part.TYPE_HIT, type == guess ? 1 : 0);
            if (type == guess) return;
        }
        odds.context(Part.TYPE_PART, place, last, beforeLast);
        odds.context(Part.TYPE_PART, 5, place, lastAbove);
        odds.number(Part.TYPE_PART, Part.sided(type));
    }
}
