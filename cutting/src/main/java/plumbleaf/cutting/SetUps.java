package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The same pieces from the same bars with fewer different set-ups: where all bars of two patterns together can be cut in one way, they are. Cost stays as it is.
 * A local improvement; the fewest set-ups of all is not sought.
 */
final class SetUps {
    private SetUps() {}

    static List<Pattern> fewer(Cutting cutting, List<Pattern> bars) {
        Map<Pattern, Integer> times = new LinkedHashMap<>();
        for (Pattern bar : bars) times.merge(bar, 1, Integer::sum);
        while (mergeOne(cutting, times)) {
            // each merge leaves one pattern less
        }
        List<Pattern> out = new ArrayList<>();
        times.forEach((pattern, count) -> {
            for (int i = 0; i < count; i++) out.add(pattern);
        });
        return out;
    }

    private static boolean mergeOne(Cutting cutting, Map<Pattern, Integer> times) {
        List<Pattern> patterns = new ArrayList<>(times.keySet());
        for (int a = 0; a < patterns.size(); a++) {
            for (int b = a + 1; b < patterns.size(); b++) {
                Pattern one = patterns.get(a);
                Pattern other = patterns.get(b);
                if (one.kind() != other.kind()) continue;
                int ones = times.getOrDefault(one, 0);
                int others = times.getOrDefault(other, 0);
                int[] shared = shared(cutting, one, ones, other, others);
                if (shared.length == 0) continue;
                times.remove(one);
                times.remove(other);
                times.merge(Pattern.of(one.kind(), shared), ones + others, Integer::sum);
                return true;
            }
        }
        return false;
    }

    /** What each of the bars would hold if all were alike; empty when that cannot be. */
    private static int[] shared(Cutting cutting, Pattern one, int ones, Pattern other, int others) {
        int[] shared = new int[cutting.sizes()];
        long used = 0;
        for (int i = 0; i < shared.length; i++) {
            int sum = one.counts().get(i) * ones + other.counts().get(i) * others;
            if (sum % (ones + others) != 0) return new int[0];
            shared[i] = sum / (ones + others);
            used += shared[i] * cutting.size[i];
        }
        return used <= cutting.room[one.kind()] ? shared : new int[0];
    }
}
