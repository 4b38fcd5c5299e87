package plumbleaf.engine.simplex;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A linear program whose columns come one after another: solve, look at the duals, add a column that pays, go on from the basis reached. The stored form is
 * hidden, and this is the one place of the engine with a memory; it lives inside a single calculation.
 *
 * <p>Each row has a variable of its own for the value of the row, kept within the row's limits, so that every start is a basis. While a basic variable is out
 * of its limits the sum of the violations is made less; after that, the cost. Steepest price first; after steps without gain Bland's rule, which never cycles.
 */
public final class GrowingProgram {
    /** Values of variables within this much of a limit count as at it: rounding of some hundred pivots on numbers of size 1 to 1000. */
    private static final double FEASIBLE = 1e-9;

    /** A reduced cost has to be worth this much, against costs of size 1. */
    private static final double PRICE = 1e-9;

    /** The smallest pivot that keeps the inverse sound. */
    private static final double PIVOT = 1e-9;

    private static final int STEPS_BETWEEN_FRESH_INVERSES = 60;
    private static final int STEPS_WITHOUT_GAIN = 30;

    private final int rows;
    private final List<int[]> columnRows = new ArrayList<>();
    private final List<double[]> columnFactors = new ArrayList<>();
    private double[] cost;
    private double[] lower;
    private double[] upper;
    private double[] value;
    private int[] placeInBasis;
    private int count;
    private final int[] basis;
    private final double[][] inverse;
    private final double[] priceOfRow;
    private boolean pricesAreForRepair;
    private int stepsSinceFresh;
    private int steps;

    /** Rows with their limits; either may be infinite. */
    public GrowingProgram(double[] rowLower, double[] rowUpper) {
        rows = rowLower.length;
        int room = Math.max(16, rows * 3);
        cost = new double[room];
        lower = new double[room];
        upper = new double[room];
        value = new double[room];
        placeInBasis = new int[room];
        basis = new int[rows];
        inverse = new double[rows][rows];
        priceOfRow = new double[rows];
        for (int i = 0; i < rows; i++) {
            append(0, rowLower[i], rowUpper[i], new int[] {i}, new double[] {-1});
            basis[i] = i;
            placeInBasis[i] = i;
            inverse[i][i] = -1;
        }
    }

    /**
     * Adds a variable.
     *
     * @param column its factors; {@link Term#variable()} is here the number of the row
     * @return its number, counted from 0
     */
    public int add(double unitCost, double least, double most, List<Term> column) {
        int[] at = new int[column.size()];
        double[] factors = new double[column.size()];
        for (int i = 0; i < at.length; i++) {
            at[i] = column.get(i).variable();
            factors[i] = column.get(i).factor();
            if (at[i] >= rows) throw new IllegalArgumentException("There is no row " + at[i]);
        }
        return append(unitCost, least, most, at, factors) - rows;
    }

    /** Gives a row other limits. */
    public void limitRow(int row, double least, double most) {
        limit(row, least, most);
    }

    /** Gives a variable other limits. */
    public void limitVariable(int variable, double least, double most) {
        limit(rows + variable, least, most);
    }

    public int size() {
        return count - rows;
    }

    private void limit(int j, double least, double most) {
        lower[j] = least;
        upper[j] = most;
        if (placeInBasis[j] < 0) {
            value[j] = resting(j);
            refreshValues();
        }
    }

    private int append(double unitCost, double least, double most, int[] at, double[] factors) {
        if (count == cost.length) {
            int room = count * 2;
            cost = Arrays.copyOf(cost, room);
            lower = Arrays.copyOf(lower, room);
            upper = Arrays.copyOf(upper, room);
            value = Arrays.copyOf(value, room);
            placeInBasis = Arrays.copyOf(placeInBasis, room);
        }
        columnRows.add(at);
        columnFactors.add(factors);
        cost[count] = unitCost;
        lower[count] = least;
        upper[count] = most;
        placeInBasis[count] = -1;
        value[count] = resting(count);
        if (value[count] != 0 && count >= rows) stepsSinceFresh = STEPS_BETWEEN_FRESH_INVERSES;
        return count++;
    }

    private double resting(int j) {
        if (lower[j] > Double.NEGATIVE_INFINITY) return lower[j];
        return upper[j] < Double.POSITIVE_INFINITY ? upper[j] : 0;
    }

    /** Goes on from the basis reached until the cost is least. */
    public Answer minimise(int stepLimit) {
        int last = steps + stepLimit;
        int withoutGain = 0;
        refreshInverse();
        while (true) {
            if (stepsSinceFresh >= STEPS_BETWEEN_FRESH_INVERSES) refreshInverse();
            boolean repairing = priceRows();
            int entering = entering(withoutGain > STEPS_WITHOUT_GAIN);
            if (entering < 0) {
                if (stepsSinceFresh > 0) {
                    refreshInverse();
                    continue;
                }
                return repairing ? new Answer.Infeasible(violation(), steps) : optimal();
            }
            if (steps >= last) return new Answer.Unfinished(steps);
            steps++;
            double gain = move(entering, repairing, withoutGain > STEPS_WITHOUT_GAIN);
            if (Double.isInfinite(gain)) return new Answer.Unbounded(steps);
            withoutGain = gain > PRICE ? 0 : withoutGain + 1;
        }
    }

    private Answer optimal() {
        double total = 0;
        List<Double> values = new ArrayList<>();
        for (int j = rows; j < count; j++) {
            total += cost[j] * value[j];
            values.add(value[j] + 0.0);
        }
        List<Double> duals = new ArrayList<>();
        for (int i = 0; i < rows; i++) duals.add(priceOfRow[i] + 0.0);
        return new Answer.Optimal(total, values, duals, steps);
    }

    /** Sets the price of each row for the cost in force; true while limits are violated. */
    private boolean priceRows() {
        boolean repairing = false;
        for (int i = 0; i < rows; i++) repairing |= outOfLimits(basis[i]) != 0;
        Arrays.fill(priceOfRow, 0);
        for (int i = 0; i < rows; i++) {
            double unit = repairing ? outOfLimits(basis[i]) : cost[basis[i]];
            if (unit == 0) continue;
            for (int k = 0; k < rows; k++) priceOfRow[k] += unit * inverse[i][k];
        }
        pricesAreForRepair = repairing;
        return repairing;
    }

    /** -1 below, +1 above, 0 within. */
    private int outOfLimits(int j) {
        double slack = FEASIBLE * Math.max(1, Math.abs(value[j]));
        if (value[j] < lower[j] - slack) return -1;
        return value[j] > upper[j] + slack ? 1 : 0;
    }

    private double violation() {
        double sum = 0;
        for (int j : basis) sum += Math.max(0, Math.max(lower[j] - value[j], value[j] - upper[j]));
        return sum;
    }

    private double reducedCost(int j) {
        double reduced = pricesAreForRepair ? 0 : cost[j];
        int[] at = columnRows.get(j);
        double[] factors = columnFactors.get(j);
        for (int k = 0; k < at.length; k++) reduced -= priceOfRow[at[k]] * factors[k];
        return reduced;
    }

    private int entering(boolean first) {
        int best = -1;
        double most = PRICE;
        for (int j = 0; j < count; j++) {
            if (placeInBasis[j] >= 0 || lower[j] == upper[j]) continue;
            double reduced = reducedCost(j);
            boolean mayRise = value[j] < upper[j];
            boolean mayFall = value[j] > lower[j];
            double worth = Math.max(mayRise ? -reduced : 0, mayFall ? reduced : 0);
            if (worth > most) {
                best = j;
                most = worth;
                if (first) return best;
            }
        }
        return best;
    }

    /** Moves the entering variable as far as limits allow; answers the gain, infinite when nothing stops it. */
    private double move(int entering, boolean repairing, boolean firstOfTies) {
        double reduced = reducedCost(entering);
        double way = reduced < 0 ? 1 : -1;
        double[] change = columnInBasis(entering);
        double reach = upper[entering] - lower[entering];
        double least = reach;
        for (int i = 0; i < rows; i++) least = Math.min(least, room(i, -way * change[i], FEASIBLE));
        int leaving = -1;
        double size = 0;
        double distance = reach;
        for (int i = 0; i < rows; i++) {
            double speed = -way * change[i];
            double exact = room(i, speed, 0);
            if (exact > least) continue;
            boolean better = firstOfTies ? comesFirst(i, exact, leaving, distance) : Math.abs(speed) > size;
            if (leaving < 0 || better) {
                leaving = i;
                size = Math.abs(speed);
                distance = exact;
            }
        }
        if (Double.isInfinite(distance)) {
            if (repairing) throw new IllegalStateException("A repair without end: numbers too far apart in size");
            return Double.POSITIVE_INFINITY;
        }
        distance = Math.max(0, distance);
        double stop = leaving < 0 ? 0 : stop(leaving, -way * change[leaving]);
        for (int i = 0; i < rows; i++) value[basis[i]] -= way * change[i] * distance;
        value[entering] += way * distance;
        if (leaving < 0) value[entering] = way > 0 ? upper[entering] : lower[entering];
        else exchange(entering, leaving, change, stop);
        stepsSinceFresh++;
        return Math.abs(reduced) * distance;
    }

    private boolean comesFirst(int i, double exact, int leaving, double distance) {
        return exact < distance || (exact == distance && leaving >= 0 && basis[i] < basis[leaving]);
    }

    /** How far the entering variable may go before basic variable {@code i}, moving at this speed, reaches a limit that stops it. */
    private double room(int i, double speed, double slack) {
        if (Math.abs(speed) < PIVOT) return Double.POSITIVE_INFINITY;
        double stop = stop(i, speed);
        if (Double.isInfinite(stop)) return Double.POSITIVE_INFINITY;
        return ((stop - value[basis[i]]) * Math.signum(speed) + slack) / Math.abs(speed);
    }

    /** The limit that stops a basic variable: out of its limits it is stopped where it comes back within, and not at all when it moves farther out. */
    private double stop(int i, double speed) {
        int j = basis[i];
        int out = outOfLimits(j);
        if (speed > 0) {
            if (out > 0) return Double.POSITIVE_INFINITY;
            return out < 0 ? lower[j] : upper[j];
        }
        if (out < 0) return Double.NEGATIVE_INFINITY;
        return out > 0 ? upper[j] : lower[j];
    }

    private double[] columnInBasis(int j) {
        double[] change = new double[rows];
        int[] at = columnRows.get(j);
        double[] factors = columnFactors.get(j);
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int k = 0; k < at.length; k++) sum += inverse[i][at[k]] * factors[k];
            change[i] = sum;
        }
        return change;
    }

    private void exchange(int entering, int leaving, double[] change, double restsAt) {
        int out = basis[leaving];
        value[out] = restsAt;
        placeInBasis[out] = -1;
        placeInBasis[entering] = leaving;
        basis[leaving] = entering;
        double[] pivotRow = inverse[leaving];
        double pivot = change[leaving];
        for (int k = 0; k < rows; k++) pivotRow[k] /= pivot;
        for (int i = 0; i < rows; i++) {
            if (i == leaving || change[i] == 0) continue;
            double factor = change[i];
            double[] row = inverse[i];
            for (int k = 0; k < rows; k++) row[k] -= factor * pivotRow[k];
        }
    }

    private void refreshInverse() {
        double[][] work = new double[rows][rows];
        for (int p = 0; p < rows; p++) {
            int[] at = columnRows.get(basis[p]);
            double[] factors = columnFactors.get(basis[p]);
            for (int k = 0; k < at.length; k++) work[at[k]][p] += factors[k];
        }
        invert(work);
        stepsSinceFresh = 0;
        refreshValues();
    }

    /** Gauss-Jordan with the largest pivot of each column; the matrix is basis column p in column p, so row p of the inverse belongs to it. */
    private void invert(double[][] work) {
        double[][] side = new double[rows][rows];
        for (int i = 0; i < rows; i++) side[i][i] = 1;
        for (int p = 0; p < rows; p++) {
            int best = p;
            for (int i = p + 1; i < rows; i++) {
                if (Math.abs(work[i][p]) > Math.abs(work[best][p])) best = i;
            }
            if (Math.abs(work[best][p]) < 1e-13) throw new IllegalStateException("The basis has become singular");
            swap(work, best, p);
            swap(side, best, p);
            double pivot = work[p][p];
            for (int k = 0; k < rows; k++) {
                work[p][k] /= pivot;
                side[p][k] /= pivot;
            }
            for (int i = 0; i < rows; i++) {
                double factor = work[i][p];
                if (i == p || factor == 0) continue;
                for (int k = p; k < rows; k++) work[i][k] -= factor * work[p][k];
                for (int k = 0; k < rows; k++) side[i][k] -= factor * side[p][k];
            }
        }
        for (int i = 0; i < rows; i++) inverse[i] = side[i];
    }

    private static void swap(double[][] matrix, int one, int other) {
        double[] kept = matrix[one];
        matrix[one] = matrix[other];
        matrix[other] = kept;
    }

    /** Basic values from those at rest. */
    private void refreshValues() {
        double[] rest = new double[rows];
        for (int j = 0; j < count; j++) {
            if (placeInBasis[j] >= 0 || value[j] == 0) continue;
            int[] at = columnRows.get(j);
            double[] factors = columnFactors.get(j);
            for (int k = 0; k < at.length; k++) rest[at[k]] -= factors[k] * value[j];
        }
        for (int i = 0; i < rows; i++) {
            double sum = 0;
            for (int k = 0; k < rows; k++) sum += inverse[i][k] * rest[k];
            value[basis[i]] = sum;
        }
    }
}
