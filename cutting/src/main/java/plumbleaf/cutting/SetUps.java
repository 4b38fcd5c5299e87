package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The same pieces from the same bars with fewer different set-ups. Two moves, while either helps: all bars of two patterns are cut in one way where that can be;
 * and as many bars of one pattern as there are, with as many of another, are cut as a pattern that is set up anyway and what is left over. Neither touches a bar,
 * so cost and proof stay. A local improvement; {@link FewestSetUps} says what is least. Check: SetUpsTest.
 */
final class SetUps {
    /** Pairs and exchanges tried at most, so that a plan of thousands of patterns stays a matter of a moment; a plan of some hundred is searched to its end. */
    private static final int MOST_TRIES = 2_000_000;

    private final Cutting cutting;
    private final Map<Column, Integer> times = new LinkedHashMap<>();
    /** How many patterns share a way to cut: bars of two lengths cut alike are set up once. */
    private final Map<Column, Integer> ways = new LinkedHashMap<>();
    /** For each size the patterns it is in. */
    private final List<Set<Column>> holding = new ArrayList<>();

    private int tries;

    private SetUps(Cutting cutting, List<Column> bars) {
        this.cutting = cutting;
        for (int i = 0; i < cutting.sizes(); i++) holding.add(new LinkedHashSet<>());
        for (Column bar : bars) change(bar, 1);
    }

    static List<Column> fewer(Cutting cutting, List<Column> bars) {
        SetUps saw = new SetUps(cutting, bars);
        while (saw.improved()) {
            // each move lowers the number of ways, which is whole and above zero
        }
        List<Column> out = new ArrayList<>();
        saw.times.forEach((pattern, count) -> {
            for (int i = 0; i < count; i++) out.add(pattern);
        });
        return out;
    }

    /** Different ways to cut; bars of two lengths cut alike share one. */
    static int count(Iterable<Column> patterns) {
        Set<Column> ways = new LinkedHashSet<>();
        for (Column pattern : patterns) ways.add(pattern.ofKind(0));
        return ways.size();
    }

    private boolean improved() {
        boolean merged = merged();
        return exchanged() || merged;
    }

    private boolean merged() {
        boolean any = false;
        List<Column> patterns = new ArrayList<>(times.keySet());
        for (int a = 0; a < patterns.size(); a++) {
            for (int b = a + 1; b < patterns.size(); b++) {
                if (++tries > MOST_TRIES) return any;
                any |= merge(patterns.get(a), patterns.get(b));
            }
        }
        return any;
    }

    /** What each of the bars would hold if all were alike, where that can be and saves a set-up. */
    private boolean merge(Column one, Column other) {
        if (one.kind != other.kind) return false;
        int ones = times.getOrDefault(one, 0);
        int others = times.getOrDefault(other, 0);
        if (ones == 0 || others == 0) return false;
        Column sum = one.plus(ones, other, others);
        for (int count : sum.times) {
            if (count % (ones + others) != 0) return false;
        }
        Column shared = sum.dividedBy(ones + others);
        if (shared.used(cutting.size) > cutting.room[one.kind]) return false;
        return saves(one, ones, other, others, shared, ones + others, shared, 0);
    }

    private boolean exchanged() {
        boolean any = false;
        for (Column known : List.copyOf(times.keySet())) {
            if (known.isEmpty()) continue;
            for (Column one : List.copyOf(holding.get(known.size[0]))) {
                if (one.equals(known)) continue;
                Set<Column> others = known.firstBeyond(one) < 0 ? times.keySet() : holding.get(known.firstBeyond(one));
                for (Column other : List.copyOf(others)) {
                    if (++tries > MOST_TRIES) return any;
                    if (other.equals(one) || other.equals(known)) continue;
                    any |= exchange(one, other, known);
                }
            }
        }
        return any;
    }

    /** One and the other become the known pattern on the bar of either, and what is left over on the bar of the second. */
    private boolean exchange(Column one, Column other, Column known) {
        int count = Math.min(times.getOrDefault(one, 0), times.getOrDefault(other, 0));
        if (count == 0 || !times.containsKey(known)) return false;
        Column sum = one.plus(1, other, 1);
        if (!known.isWithin(sum)) return false;
        Column rest = sum.plus(1, known, -1);
        return !rest.isEmpty()
                && (moved(one, other, known, one.kind, rest.ofKind(other.kind), count)
                        || moved(one, other, known, other.kind, rest.ofKind(one.kind), count));
    }

    private boolean moved(Column one, Column other, Column known, int kind, Column rest, int count) {
        if (rest.used(cutting.size) > cutting.room[rest.kind]) return false;
        if (kind != known.kind && known.used(cutting.size) > cutting.room[kind]) return false;
        return saves(one, count, other, count, known.ofKind(kind), count, rest, count);
    }

    /** Takes bars of two patterns away and puts bars of two in; all is as it was where that saves no set-up. */
    private boolean saves(
            Column one, int ones, Column other, int others, Column first, int firsts, Column second, int seconds) {
        int before = ways.size();
        change(one, -ones);
        change(other, -others);
        change(first, firsts);
        change(second, seconds);
        if (ways.size() < before) return true;
        change(second, -seconds);
        change(first, -firsts);
        change(other, others);
        change(one, ones);
        return false;
    }

    private void change(Column pattern, int by) {
        if (by == 0) return;
        int now = times.getOrDefault(pattern, 0) + by;
        if (now == by) {
            ways.merge(pattern.ofKind(0), 1, Integer::sum);
            for (int size : pattern.size) holding.get(size).add(pattern);
        }
        if (now > 0) {
            times.put(pattern, now);
            return;
        }
        times.remove(pattern);
        ways.computeIfPresent(pattern.ofKind(0), (way, count) -> count == 1 ? null : count - 1);
        for (int size : pattern.size) holding.get(size).remove(pattern);
    }
}
