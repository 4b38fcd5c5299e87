package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Sets of sizes of an odd number of pieces that the fractions cut two to a bar among themselves: one of the pieces has no other beside it, so the bars come to half
 * a bar more than that. Where bars hold two pieces or so, such sets are what keeps fractions from being whole. Looked for where patterns in use hang together.
 * Source: J. Edmonds, Journal of Research of the National Bureau of Standards 69B (1965) 125-130, for the sets; M. Grötschel and O. Holland, Mathematical
 * Programming 33 (1985) 243-259, for looking at what hangs together; both from memory. Check: OddSetsTest.
 */
final class OddSets {
    /** A set has to be this much short of the bars it needs. */
    private static final double SHORT = 0.04;

    /** Patterns used less than so often are looked past. */
    private static final double[] LOOKED_PAST = {0, 0.26, 0.51};

    private final int[] demand;
    private final List<PoolProgram.Use> used;
    private final int[] root;

    private OddSets(int[] demand, List<PoolProgram.Use> used) {
        this.demand = demand;
        this.used = used;
        this.root = new int[demand.length];
    }

    /** Each set by its sizes, rising; none of them twice. */
    static List<int[]> broken(int[] demand, List<PoolProgram.Use> used, Effort effort) {
        OddSets sets = new OddSets(demand, used);
        Set<List<Integer>> found = new LinkedHashSet<>();
        for (double lookedPast : LOOKED_PAST) sets.add(lookedPast, found);
        effort.add(LOOKED_PAST.length * ((long) used.size() + demand.length) / 4 + 1);
        return found.stream()
                .map(set -> set.stream().mapToInt(size -> size).toArray())
                .toList();
    }

    private void add(double lookedPast, Set<List<Integer>> found) {
        for (int size = 0; size < root.length; size++) root[size] = size;
        for (PoolProgram.Use use : used) {
            if (use.times() <= lookedPast) continue;
            int[] sizes = use.column().size;
            for (int size : sizes) root[rootOf(size)] = rootOf(sizes[0]);
        }
        int[] pieces = new int[root.length];
        double[] bars = new double[root.length];
        for (int size = 0; size < root.length; size++) pieces[rootOf(size)] += demand[size];
        int[] held = new int[root.length];
        for (PoolProgram.Use use : used) {
            Column column = use.column();
            for (int k = 0; k < column.size.length; k++) held[rootOf(column.size[k])] += column.times[k];
            for (int size : column.size) {
                int of = rootOf(size);
                bars[of] += Math.floorDiv(held[of] + 1, 2) * use.times();
                held[of] = 0;
            }
        }
        for (int of = 0; of < root.length; of++) {
            if (pieces[of] % 2 == 1 && Math.floorDiv(pieces[of] + 1, 2) - bars[of] > SHORT) found.add(sizesOf(of));
        }
    }

    private List<Integer> sizesOf(int of) {
        List<Integer> sizes = new ArrayList<>();
        for (int size = 0; size < root.length; size++) if (rootOf(size) == of) sizes.add(size);
        return sizes;
    }

    private int rootOf(int size) {
        int at = size;
        while (root[at] != at) at = root[at];
        return at;
    }
}
