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
 * so cost and proof stay. A local improvement: the fewest set-ups of all is not sought. Check: SetUpsTest.
 */
final class SetUps {
    /** Exchanges tried at most, so that a plan of hundreds of patterns stays a matter of a moment; a plan of thirty is searched to its end. */
    private static final int MOST_TRIES = 2_000_000;

    private final Cutting cutting;
    private Map<Pattern, Integer> times = new LinkedHashMap<>();
    private int tries;

    private SetUps(Cutting cutting, List<Pattern> bars) {
        this.cutting = cutting;
        for (Pattern bar : bars) times.merge(bar, 1, Integer::sum);
    }

    static List<Pattern> fewer(Cutting cutting, List<Pattern> bars) {
        SetUps saw = new SetUps(cutting, bars);
        while (saw.mergeOne() || saw.exchangeOne()) {
            // each move lowers the measure, which is whole and above zero
        }
        List<Pattern> out = new ArrayList<>();
        saw.times.forEach((pattern, count) -> {
            for (int i = 0; i < count; i++) out.add(pattern);
        });
        return out;
    }

    /** Different ways to cut; bars of two lengths cut alike share one. */
    static int count(Iterable<Pattern> patterns) {
        Set<List<Integer>> ways = new LinkedHashSet<>();
        for (Pattern pattern : patterns) ways.add(pattern.counts());
        return ways.size();
    }

    private boolean mergeOne() {
        List<Pattern> patterns = new ArrayList<>(times.keySet());
        for (int a = 0; a < patterns.size(); a++) {
            for (int b = a + 1; b < patterns.size(); b++) {
                Pattern one = patterns.get(a);
                Pattern other = patterns.get(b);
                if (one.kind() != other.kind()) continue;
                int ones = times.getOrDefault(one, 0);
                int others = times.getOrDefault(other, 0);
                int[] shared = shared(one, ones, other, others);
                if (shared.length == 0) continue;
                Map<Pattern, Integer> next = new LinkedHashMap<>(times);
                next.remove(one);
                next.remove(other);
                next.merge(Pattern.of(one.kind(), shared), ones + others, Integer::sum);
                if (count(next.keySet()) >= count(times.keySet())) continue;
                times = next;
                return true;
            }
        }
        return false;
    }

    /** What each of the bars would hold if all were alike; empty when that cannot be. */
    private int[] shared(Pattern one, int ones, Pattern other, int others) {
        int[] shared = new int[cutting.sizes()];
        for (int i = 0; i < shared.length; i++) {
            int sum = one.counts().get(i) * ones + other.counts().get(i) * others;
            if (sum % (ones + others) != 0) return new int[0];
            shared[i] = sum / (ones + others);
        }
        return fits(shared, one.kind()) ? shared : new int[0];
    }

    private boolean exchangeOne() {
        List<Pattern> patterns = new ArrayList<>(times.keySet());
        for (Pattern one : patterns) {
            int count = times.getOrDefault(one, 0);
            for (Pattern other : patterns) {
                if (other.equals(one) || times.getOrDefault(other, 0) < count) continue;
                for (Pattern known : patterns) {
                    if (++tries > MOST_TRIES) return false;
                    if (known.equals(one) || known.equals(other)) continue;
                    if (exchange(one, other, known, count)) return true;
                }
            }
        }
        return false;
    }

    /** One and the other become the known pattern on the bar of either, and what is left over on the bar of the second. */
    private boolean exchange(Pattern one, Pattern other, Pattern known, int count) {
        int[] rest = new int[cutting.sizes()];
        for (int i = 0; i < rest.length; i++) {
            rest[i] =
                    one.counts().get(i) + other.counts().get(i) - known.counts().get(i);
            if (rest[i] < 0) return false;
        }
        return moved(one, other, known, one.kind(), other.kind(), rest, count)
                || moved(one, other, known, other.kind(), one.kind(), rest, count);
    }

    private boolean moved(Pattern one, Pattern other, Pattern known, int kind, int restKind, int[] rest, int count) {
        Pattern again = new Pattern(kind, known.counts());
        Pattern left = Pattern.of(restKind, rest);
        if (left.isEmpty() || !fits(rest, restKind)) return false;
        if (kind != known.kind() && used(known) > cutting.room[kind]) return false;
        Map<Pattern, Integer> next = new LinkedHashMap<>(times);
        for (Pattern gone : List.of(one, other)) next.merge(gone, -count, Integer::sum);
        next.merge(again, count, Integer::sum);
        next.merge(left, count, Integer::sum);
        next.values().removeIf(each -> each == 0);
        if (count(next.keySet()) >= count(times.keySet())) return false;
        times = next;
        return true;
    }

    private boolean fits(int[] counts, int kind) {
        long used = 0;
        for (int i = 0; i < counts.length; i++) used += counts[i] * cutting.size[i];
        return used <= cutting.room[kind];
    }

    private long used(Pattern pattern) {
        long used = 0;
        for (int i = 0; i < cutting.sizes(); i++) used += pattern.counts().get(i) * cutting.size[i];
        return used;
    }
}
