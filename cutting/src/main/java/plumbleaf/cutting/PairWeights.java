package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** How much, in fractions of bars, each two sizes lie together, and which triples of sizes the fractions cut into too few bars. */
final class PairWeights {
    /** A triple has to be this much short of the bars it needs. */
    private static final double SHORT = 0.04;

    private static final int TRIPLES_A_ROUND = 40;
    private static final int TRIPLES_OF_A_SIZE = 4;
    private static final double WHOLE = 1e-4;

    private final int sizes;
    private final double[][] weight;
    private final List<List<Integer>> neighbours = new ArrayList<>();
    private final List<List<PoolProgram.Use>> holding = new ArrayList<>();

    PairWeights(int sizes) {
        this.sizes = sizes;
        this.weight = new double[sizes][];
        for (int i = 0; i < sizes; i++) {
            weight[i] = new double[sizes];
            neighbours.add(new ArrayList<>());
            holding.add(new ArrayList<>());
        }
    }

    void of(List<PoolProgram.Use> used) {
        for (int i = 0; i < sizes; i++) {
            for (int j : neighbours.get(i)) weight[i][j] = 0;
            weight[i][i] = 0;
            neighbours.get(i).clear();
            holding.get(i).clear();
        }
        for (PoolProgram.Use use : used) {
            Column column = use.column();
            for (int a = 0; a < column.size.length; a++) {
                int i = column.size[a];
                holding.get(i).add(use);
                if (column.times[a] >= 2) weight[i][i] += use.times();
                for (int b = a + 1; b < column.size.length; b++) {
                    int j = column.size[b];
                    if (weight[i][j] == 0) {
                        neighbours.get(i).add(j);
                        neighbours.get(j).add(i);
                    }
                    weight[i][j] += use.times();
                    weight[j][i] += use.times();
                }
            }
        }
    }

    double weight(int i, int j) {
        return weight[i][j];
    }

    /**
     * Two sizes nearly together but not wholly, one of which has few patterns left: deciding there leaves least open elsewhere. Empty when all are whole. Wider
     * pieces break ties. Two single pieces that lie together in a bar or more are decided, however often more.
     *
     * @param demand pieces of each size
     * @param patterns how many patterns hold each size
     */
    int[] mostOpenPair(int[] demand, int[] patterns) {
        int[] best = new int[0];
        double most = 0;
        for (int i = 0; i < sizes; i++) {
            double self = weight[i][i] - Math.floor(weight[i][i] + WHOLE);
            if (self > WHOLE && self > most + 1e-9) {
                most = self;
                best = new int[] {i, i};
            }
            for (int j : neighbours.get(i)) {
                if (j < i || (demand[i] == 1 && demand[j] == 1 && weight[i][j] > 1 - WHOLE)) continue;
                double part = weight[i][j] - Math.floor(weight[i][j] + WHOLE);
                double rate = openness(part) / Math.max(1, Math.min(patterns[i], patterns[j]));
                if (part > WHOLE && rate > most + 1e-12) {
                    most = rate;
                    best = new int[] {i, j};
                }
            }
        }
        return best;
    }

    /** Nearly together counts for little: there is not much left to decide. */
    private static double openness(double part) {
        return part > 0.8 ? 1 - part : part;
    }

    private record Triple(int a, int b, int c, double missing) {}

    /** Of an odd number of pieces in all, and cut into fewer than half as many bars, a pair of them counted as one. */
    List<int[]> brokenTriples(int[] demand, Effort effort) {
        List<Triple> found = new ArrayList<>();
        long looks = 0;
        for (int i = 0; i < sizes; i++) {
            List<Integer> near = neighbours.get(i);
            for (int x = 0; x < near.size(); x++) {
                int j = near.get(x);
                for (int y = x + 1; y < near.size(); y++) {
                    int k = near.get(y);
                    // a triple of which all three lie together is found at its first size only
                    if (weight[j][k] > 0 && (i > j || i > k)) continue;
                    int sum = demand[i] + demand[j] + demand[k];
                    if (sum % 2 == 0) continue;
                    double covered = half(i, j, k);
                    looks += holding.get(i).size()
                            + holding.get(j).size()
                            + holding.get(k).size();
                    double missing = Math.floorDiv(sum + 1, 2) - covered;
                    if (missing > SHORT) found.add(new Triple(i, j, k, missing));
                }
            }
        }
        effort.add(looks / 8 + 1);
        found.sort(Comparator.comparingDouble((Triple each) -> -each.missing())
                .thenComparingInt(Triple::a)
                .thenComparingInt(Triple::b)
                .thenComparingInt(Triple::c));
        List<int[]> chosen = new ArrayList<>();
        Set<List<Integer>> seen = new TreeSet<>(Comparator.comparing(List::toString));
        int[] times = new int[sizes];
        for (Triple each : found) {
            if (chosen.size() >= TRIPLES_A_ROUND) break;
            if (times[each.a()] >= TRIPLES_OF_A_SIZE
                    || times[each.b()] >= TRIPLES_OF_A_SIZE
                    || times[each.c()] >= TRIPLES_OF_A_SIZE) continue;
            List<Integer> key = new ArrayList<>(List.of(each.a(), each.b(), each.c()));
            key.sort(Comparator.naturalOrder());
            if (!seen.add(key)) continue;
            times[each.a()]++;
            times[each.b()]++;
            times[each.c()]++;
            chosen.add(key.stream().mapToInt(size -> size).toArray());
        }
        return chosen;
    }

    /** Bars by half the pieces of these sizes in them, rounded up. */
    private double half(int i, int j, int k) {
        double sum = 0;
        for (PoolProgram.Use use : holding.get(i)) sum += halves(use, i, j, k) * use.times();
        for (PoolProgram.Use use : holding.get(j)) {
            if (use.column().count(i) == 0) sum += halves(use, i, j, k) * use.times();
        }
        for (PoolProgram.Use use : holding.get(k)) {
            if (use.column().count(i) == 0 && use.column().count(j) == 0) sum += halves(use, i, j, k) * use.times();
        }
        return sum;
    }

    private static int halves(PoolProgram.Use use, int i, int j, int k) {
        Column column = use.column();
        return (column.count(i) + column.count(j) + column.count(k) + 1) / 2;
    }
}
