package plumbleaf.cutting;

/**
 * In which order the patterns of a size are tried: first one whose pieces have the fewest patterns. Of two alike by a tenth either may come first, another each
 * time it is asked.
 */
final class FewestOthers {
    private static final double BLUR = 0.1;

    private final Column[] patterns;
    private final int[] left;
    private long seed = 1;

    /** @param left how many patterns each size has, as it is while they are asked for */
    FewestOthers(Column[] patterns, int[] left) {
        this.patterns = patterns;
        this.left = left;
    }

    /** Puts these patterns in order; answers them. */
    int[] inOrder(int[] some) {
        double[] others = new double[some.length];
        for (int n = 0; n < some.length; n++) {
            int p = some[n];
            double sum = 0;
            for (int each : patterns[p].size) sum += left[each];
            double here = sum / patterns[p].size.length * (1 + BLUR * picked());
            int at = n;
            for (; at > 0 && others[at - 1] > here; at--) {
                others[at] = others[at - 1];
                some[at] = some[at - 1];
            }
            others[at] = here;
            some[at] = p;
        }
        return some;
    }

    /** Between -1 and 1. */
    private double picked() {
        seed = seed * 6364136223846793005L + 1442695040888963407L;
        return (seed >>> 33) / (double) (1L << 30) - 1;
    }
}
