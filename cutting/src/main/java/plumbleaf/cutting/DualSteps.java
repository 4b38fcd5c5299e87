package plumbleaf.cutting;

/**
 * The dual way back within the limits, where no column pays at the prices in force: each pivot takes the value farthest out to its limit, and lets the variable
 * enter that keeps all others from paying. Source: C. E. Lemke, Naval Research Logistics Quarterly 1 (1954) 36-47.
 */
final class DualSteps {
    private static final double PAYS = 1e-7;
    private static final double PIVOT = 1e-7;
    private static final double TIE = 1e-10;

    private final RowTable table;
    private final Basis basis;
    private final Prices prices;
    private final EnteringWeights weights;

    DualSteps(RowTable table, Basis basis, Prices prices, EnteringWeights weights) {
        this.table = table;
        this.basis = basis;
        this.prices = prices;
        this.weights = weights;
    }

    /**
     * @param end OPTIMAL when all are within, INFEASIBLE when one cannot be, UNFINISHED when the primal way has to see to it
     * @param pivots taken
     */
    record Outcome(RowProgram.End end, int pivots) {}

    Outcome back(int pivotLimit) {
        prices.anew(false);
        for (int c = 0; c < table.columns; c++) {
            if (!basis.holdsColumn(c) && !table.off[c] && prices.reducedCost(c) < -PAYS)
                return new Outcome(RowProgram.End.UNFINISHED, 0);
        }
        int most = Math.min(pivotLimit, 4 * table.rows + 100);
        int pivots = 0;
        for (int n = 0; n < most; n++) {
            if (basis.isWorn()) refresh();
            int leaving = farthestOut();
            if (leaving < 0) return new Outcome(RowProgram.End.OPTIMAL, pivots);
            boolean below = basis.outOfLimits(leaving) < 0;
            int entering = entering(leaving, below);
            if (entering == EnteringWeights.NONE) {
                if (basis.pivotsSinceFresh() > 0) {
                    refresh();
                    if (basis.outOfLimits(leaving) == 0) continue;
                    if (entering(leaving, basis.outOfLimits(leaving) < 0) != EnteringWeights.NONE) continue;
                }
                prices.ofMissIn(leaving);
                return new Outcome(RowProgram.End.INFEASIBLE, pivots);
            }
            pivots++;
            pivot(entering, leaving, below);
        }
        return new Outcome(RowProgram.End.UNFINISHED, pivots);
    }

    private void refresh() {
        basis.refresh();
        prices.anew(false);
    }

    private int farthestOut() {
        int place = -1;
        double farthest = 0;
        for (int i = 0; i < table.rows; i++) {
            int out = basis.outOfLimits(i);
            if (out == 0) continue;
            double far = out < 0
                    ? basis.lower(basis.basic[i]) - basis.value[i]
                    : basis.value[i] - basis.upper(basis.basic[i]);
            if (far > farthest) {
                farthest = far;
                place = i;
            }
        }
        return place;
    }

    private void pivot(int entering, int leaving, boolean below) {
        double[] change = basis.changeOf(entering);
        double reduced = prices.reducedCostOf(entering);
        int leaves = basis.basic[leaving];
        double stop = below ? basis.lower(leaves) : basis.upper(leaves);
        double step = (basis.value[leaving] - stop) / change[leaving];
        double from = basis.resting(entering);
        for (int i = 0; i < change.length; i++) basis.value[i] -= change[i] * step;
        int left = basis.pivot(entering, leaving, change, from + step);
        basis.restAt(left, stop);
        weights.forget(left);
        prices.follow(leaving, reduced);
    }

    /** What may enter for this place with the least loss, the largest pivot among near ties. */
    private int entering(int leaving, boolean below) {
        double[] row = basis.inverse[leaving];
        int best = EnteringWeights.NONE;
        double least = Double.POSITIVE_INFINITY;
        double largest = 0;
        for (int c = 0; c < table.columns; c++) {
            if (basis.holdsColumn(c) || table.off[c]) continue;
            double share = table.times(c, row);
            if (below ? share > -PIVOT : share < PIVOT) continue;
            double size = Math.abs(share);
            double ratio = Math.max(0, prices.reducedCost(c)) / size;
            if (ratio < least - TIE || (ratio < least + TIE && size > largest)) {
                best = c;
                least = ratio;
                largest = size;
            }
        }
        for (int r = 0; r < table.rows; r++) {
            if (basis.holdsRow(r)) continue;
            double share = -row[r];
            if (Math.abs(share) < PIVOT) continue;
            boolean rises = below ? share < 0 : share > 0;
            if (!table.isFree(r) && rises == basis.restsHigh(r)) continue;
            double size = Math.abs(share);
            double ratio = Math.abs(prices.dual(r)) / size;
            if (ratio < least - TIE || (ratio < least + TIE && size > largest)) {
                best = ~r;
                least = ratio;
                largest = size;
            }
        }
        return best;
    }
}
