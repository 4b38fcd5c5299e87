package plumbleaf.cutting;

import java.util.Arrays;

/**
 * The linear program behind a cut plan: columns are zero or more (or switched off), rows are kept between two limits. Rows, columns and limits may come and
 * change at any time; it goes on from the basis reached. As {@code simplex.GrowingProgram}, but made for some hundred rows and thousands of sparse columns: the
 * inverse is brought along from pivot to pivot and made afresh only now and then, and rows can be added.
 * Method: revised simplex with composite phase 1; source: V. Chvatal, Linear Programming (1983), chapters 7 and 8. Check: RowProgramTest.
 */
final class RowProgram {
    /** Rounding of some hundred pivots on numbers of size 1 to 1000. */
    private static final double FEASIBLE = 1e-9;

    private static final double PRICE = 1e-9;
    private static final double PIVOT = 1e-8;
    private static final int PIVOTS_BETWEEN_FRESH = 150;
    private static final int STALLS = 400;

    /** How the last {@link #minimise} ended. */
    enum End {
        OPTIMAL,
        INFEASIBLE,
        UNFINISHED
    }

    /**
     * Limits of rows are kept this much wider, each by another amount, so that no two columns reach them at once and pivots do not go in circles. Values are off by
     * about as much; duals are not. ({@link #low} and {@link #high} are the limits as given.)
     */
    private static final double EASE = 1e-6;

    private int rows;
    private double[] given;
    private double[] givenMost;
    private double[] low;
    private double[] high;
    private boolean[] restsHigh;
    private int[] placeOfRow;

    private int columns;
    private double[] cost;
    private double[] weight;
    private double[] weightOfRow;
    private boolean[] off;
    private int[] placeOfColumn;
    private int[][] at;
    private double[][] factor;

    /** What is basic in each place: column c as c, the value of row r as {@code ~r}. */
    private int[] basis;

    private double[] value;
    private double[][] inverse;
    private double[] dual;
    private boolean repairing;
    private int sinceFresh;
    private boolean stale;
    private long pivots;
    private int[] nonZero;

    RowProgram(int roomForRows) {
        int room = Math.max(8, roomForRows);
        given = new double[room];
        givenMost = new double[room];
        low = new double[room];
        high = new double[room];
        restsHigh = new boolean[room];
        placeOfRow = new int[room];
        basis = new int[room];
        value = new double[room];
        inverse = new double[room][room];
        dual = new double[room];
        nonZero = new int[room];
        int some = 4 * room;
        cost = new double[some];
        weight = new double[some];
        weightOfRow = new double[room];
        off = new boolean[some];
        placeOfColumn = new int[some];
        at = new int[some][];
        factor = new double[some][];
    }

    int rows() {
        return rows;
    }

    int columns() {
        return columns;
    }

    long pivots() {
        return pivots;
    }

    /** A row no column is in yet. */
    int addRow(double least, double most) {
        if (rows == low.length) growRows();
        int row = rows++;
        set(row, least, most);
        restsHigh[row] = false;
        weightOfRow[row] = 1;
        basis[row] = ~row;
        placeOfRow[row] = row;
        value[row] = 0;
        Arrays.fill(inverse[row], 0);
        for (int i = 0; i < row; i++) inverse[i][row] = 0;
        inverse[row][row] = -1;
        dual[row] = 0;
        return row;
    }

    /** A row over columns that are there already. */
    int addRow(double least, double most, double[] ofColumn) {
        int row = addRow(least, most);
        double[] mine = inverse[row];
        for (int c = 0; c < columns; c++) {
            double each = ofColumn[c];
            if (each == 0) continue;
            int n = at[c].length;
            at[c] = Arrays.copyOf(at[c], n + 1);
            factor[c] = Arrays.copyOf(factor[c], n + 1);
            at[c][n] = row;
            factor[c][n] = each;
            int place = placeOfColumn[c];
            if (place < 0) continue;
            value[row] += each * value[place];
            double[] from = inverse[place];
            for (int k = 0; k < row; k++) mine[k] += each * from[k];
        }
        return row;
    }

    /** A column of zero or more; answers its number. */
    int addColumn(double unitCost, int[] inRows, double[] factors) {
        if (columns == cost.length) {
            int room = columns * 2;
            cost = Arrays.copyOf(cost, room);
            weight = Arrays.copyOf(weight, room);
            off = Arrays.copyOf(off, room);
            placeOfColumn = Arrays.copyOf(placeOfColumn, room);
            at = Arrays.copyOf(at, room);
            factor = Arrays.copyOf(factor, room);
        }
        cost[columns] = unitCost;
        weight[columns] = 1;
        off[columns] = false;
        placeOfColumn[columns] = -1;
        at[columns] = inRows;
        factor[columns] = factors;
        return columns++;
    }

    void limit(int row, double least, double most) {
        if (given[row] == least && givenMost[row] == most) return;
        set(row, least, most);
        if (placeOfRow[row] < 0) {
            if (restsHigh[row] && Double.isInfinite(most)) restsHigh[row] = false;
            if (!restsHigh[row] && Double.isInfinite(least)) restsHigh[row] = !Double.isInfinite(most);
            stale = true;
        }
    }

    private void set(int row, double least, double most) {
        given[row] = least;
        givenMost[row] = most;
        double ease = EASE * (1 + ((row * 0x9E3779B9L) >>> 7 & 1023) / 1024.0);
        low[row] = least - ease;
        high[row] = most + ease;
    }

    /** A column switched off may only be zero. */
    void switchOff(int column, boolean isOff) {
        off[column] = isOff;
    }

    double low(int row) {
        return given[row];
    }

    double high(int row) {
        return givenMost[row];
    }

    double valueOf(int column) {
        int place = placeOfColumn[column];
        return place < 0 ? 0 : value[place];
    }

    boolean isBasic(int column) {
        return placeOfColumn[column] >= 0;
    }

    /** What the least cost rises by for each unit a row's binding limit rises; after INFEASIBLE, what the missed limits do. */
    double dual(int row) {
        return dual[row];
    }

    double reducedCost(int column) {
        double reduced = repairing ? 0 : cost[column];
        int[] in = at[column];
        double[] by = factor[column];
        for (int k = 0; k < in.length; k++) reduced -= dual[in[k]] * by[k];
        return reduced;
    }

    /** Goes on from the basis reached until the cost is least. */
    End minimise(int pivotLimit) {
        int left = pivotLimit;
        int stalls = 0;
        if (stale || sinceFresh >= PIVOTS_BETWEEN_FRESH) fresh();
        boolean pricesHold = false;
        if (anyOutOfLimits()) {
            End end = repair(left);
            if (end == End.INFEASIBLE) return end;
        }
        while (true) {
            if (sinceFresh >= PIVOTS_BETWEEN_FRESH) {
                fresh();
                pricesHold = false;
            }
            boolean broken = anyOutOfLimits();
            if (broken || !pricesHold || repairing) {
                repairing = broken;
                price();
                pricesHold = true;
            }
            boolean first = stalls > STALLS;
            int entering = entering(first);
            if (entering == NONE) {
                if (sinceFresh > 0 && (sinceFresh > 40 || repairing)) {
                    fresh();
                    pricesHold = false;
                    continue;
                }
                return repairing ? End.INFEASIBLE : End.OPTIMAL;
            }
            if (left-- <= 0) return End.UNFINISHED;
            pivots++;
            double gain = move(entering, first);
            if (gain < 0) return End.UNFINISHED;
            stalls = gain > 1e-12 ? 0 : stalls + 1;
        }
    }

    private static final int NONE = Integer.MIN_VALUE;

    /**
     * The dual way back within the limits, where no column pays at the prices in force: each pivot takes the value farthest out to its limit, and lets the column
     * enter that keeps all others from paying. OPTIMAL when all are within, INFEASIBLE when one cannot be, UNFINISHED when {@link #minimise} has to see to it.
     */
    private End repair(int pivotLimit) {
        repairing = false;
        price();
        for (int c = 0; c < columns; c++) {
            if (placeOfColumn[c] < 0 && !off[c] && reducedCost(c) < -1e-7) return End.UNFINISHED;
        }
        int most = Math.min(pivotLimit, 4 * rows + 100);
        for (int n = 0; n < most; n++) {
            if (sinceFresh >= PIVOTS_BETWEEN_FRESH) {
                fresh();
                price();
            }
            int leaving = -1;
            double farthest = 0;
            for (int i = 0; i < rows; i++) {
                int out = outOfLimits(i);
                if (out == 0) continue;
                double far = out < 0 ? lower(basis[i]) - value[i] : value[i] - upper(basis[i]);
                if (far > farthest) {
                    farthest = far;
                    leaving = i;
                }
            }
            if (leaving < 0) return End.OPTIMAL;
            boolean below = outOfLimits(leaving) < 0;
            int entering = enteringFor(leaving, below);
            if (entering == NONE) {
                if (sinceFresh > 0) {
                    fresh();
                    price();
                    if (outOfLimits(leaving) == 0) continue;
                    if (enteringFor(leaving, outOfLimits(leaving) < 0) != NONE) continue;
                }
                repairing = true;
                double unit = outOfLimits(leaving) < 0 ? -1 : 1;
                for (int k = 0; k < rows; k++) dual[k] = unit * inverse[leaving][k];
                return End.INFEASIBLE;
            }
            pivots++;
            double[] change = changeOf(entering);
            double reduced = entering >= 0 ? reducedCost(entering) : dual[~entering];
            double stop = below ? lower(basis[leaving]) : upper(basis[leaving]);
            double step = (value[leaving] - stop) / change[leaving];
            double at0 = entering >= 0 ? 0 : resting(~entering);
            for (int i = 0; i < rows; i++) value[i] -= change[i] * step;
            exchange(entering, leaving, change);
            value[leaving] = at0 + step;
            rest(placeLeft, stop);
            if (placeLeft >= 0) weight[placeLeft] = 1;
            double[] pivotRow = inverse[leaving];
            for (int k = 0; k < rows; k++) dual[k] += reduced * pivotRow[k];
            sinceFresh++;
        }
        return End.UNFINISHED;
    }

    /** What may enter for this place with the least loss, the largest pivot among near ties. */
    private int enteringFor(int leaving, boolean below) {
        double[] row = inverse[leaving];
        int best = NONE;
        double least = Double.POSITIVE_INFINITY;
        double largest = 0;
        for (int c = 0; c < columns; c++) {
            if (placeOfColumn[c] >= 0 || off[c]) continue;
            int[] in = at[c];
            double[] by = factor[c];
            double share = 0;
            for (int k = 0; k < in.length; k++) share += row[in[k]] * by[k];
            if (below ? share > -1e-7 : share < 1e-7) continue;
            double size = Math.abs(share);
            double ratio = Math.max(0, reducedCost(c)) / size;
            if (ratio < least - 1e-10 || (ratio < least + 1e-10 && size > largest)) {
                best = c;
                least = ratio;
                largest = size;
            }
        }
        for (int r = 0; r < rows; r++) {
            if (placeOfRow[r] >= 0) continue;
            double share = -row[r];
            if (Math.abs(share) < 1e-7) continue;
            boolean free = Double.isInfinite(low[r]) && Double.isInfinite(high[r]);
            boolean rises = below ? share < 0 : share > 0;
            if (!free && rises == restsHigh[r]) continue;
            double size = Math.abs(share);
            double ratio = Math.abs(dual[r]) / size;
            if (ratio < least - 1e-10 || (ratio < least + 1e-10 && size > largest)) {
                best = ~r;
                least = ratio;
                largest = size;
            }
        }
        return best;
    }

    private boolean anyOutOfLimits() {
        for (int i = 0; i < rows; i++) {
            if (outOfLimits(i) != 0) return true;
        }
        return false;
    }

    private double lower(int variable) {
        return variable >= 0 ? 0 : low[~variable];
    }

    private double upper(int variable) {
        if (variable >= 0) return off[variable] ? 0 : Double.POSITIVE_INFINITY;
        return high[~variable];
    }

    /** -1 below, +1 above, 0 within. */
    private int outOfLimits(int place) {
        double slack = FEASIBLE * Math.max(1, Math.abs(value[place]));
        if (value[place] < lower(basis[place]) - slack) return -1;
        return value[place] > upper(basis[place]) + slack ? 1 : 0;
    }

    private void price() {
        Arrays.fill(dual, 0, rows, 0);
        for (int i = 0; i < rows; i++) {
            double unit = repairing ? outOfLimits(i) : basis[i] >= 0 ? cost[basis[i]] : 0;
            if (unit == 0) continue;
            double[] row = inverse[i];
            for (int k = 0; k < rows; k++) dual[k] += unit * row[k];
        }
    }

    /** The column or row value that pays most for the way it goes (P. M. J. Harris, Mathematical Programming 5, 1973, 1-28), or the first that pays. */
    private int entering(boolean first) {
        int best = NONE;
        double most = 0;
        for (int c = 0; c < columns; c++) {
            if (placeOfColumn[c] >= 0 || off[c]) continue;
            double worth = -reducedCost(c);
            if (worth <= PRICE) continue;
            if (first) return c;
            double rate = worth * worth / weight[c];
            if (rate > most) {
                best = c;
                most = rate;
            }
        }
        for (int r = 0; r < rows; r++) {
            if (placeOfRow[r] >= 0 || low[r] == high[r]) continue;
            boolean free = Double.isInfinite(low[r]) && Double.isInfinite(high[r]);
            double worth = free ? Math.abs(dual[r]) : restsHigh[r] ? dual[r] : -dual[r];
            if (worth <= PRICE) continue;
            if (first) return ~r;
            double rate = worth * worth / weightOfRow[r];
            if (rate > most) {
                best = ~r;
                most = rate;
            }
        }
        return best;
    }

    private void weigh(int entering, int left, double[] pivotRow, double pivot) {
        double mine = entering >= 0 ? weight[entering] : weightOfRow[~entering];
        if (mine > 1e7) {
            Arrays.fill(weight, 1);
            Arrays.fill(weightOfRow, 1);
            mine = 1;
        }
        for (int c = 0; c < columns; c++) {
            if (placeOfColumn[c] >= 0 || off[c]) continue;
            int[] in = at[c];
            double[] by = factor[c];
            double share = 0;
            for (int k = 0; k < in.length; k++) share += pivotRow[in[k]] * by[k];
            if (share != 0) weight[c] = Math.max(weight[c], share * share * mine);
        }
        for (int r = 0; r < rows; r++) {
            if (placeOfRow[r] < 0 && pivotRow[r] != 0)
                weightOfRow[r] = Math.max(weightOfRow[r], pivotRow[r] * pivotRow[r] * mine);
        }
        double gone = Math.max(1, mine / (pivot * pivot));
        if (left >= 0) weight[left] = gone;
        else weightOfRow[~left] = gone;
    }

    private double resting(int row) {
        if (restsHigh[row]) return high[row];
        return Double.isInfinite(low[row]) ? 0 : low[row];
    }

    /** Moves the entering variable as far as limits allow; answers the gain, below zero when nothing stops it. */
    private double move(int entering, boolean firstOfTies) {
        double reduced = entering >= 0 ? reducedCost(entering) : dual[~entering];
        double way = reduced < 0 ? 1 : -1;
        double[] change = changeOf(entering);
        double reach = entering >= 0 ? Double.POSITIVE_INFINITY : high[~entering] - low[~entering];
        double least = reach;
        for (int i = 0; i < rows; i++) {
            if (Math.abs(change[i]) >= PIVOT) least = Math.min(least, room(i, -way * change[i], FEASIBLE));
        }
        int leaving = -1;
        double size = 0;
        double distance = reach;
        for (int i = 0; i < rows; i++) {
            if (Math.abs(change[i]) < PIVOT) continue;
            double exact = room(i, -way * change[i], 0);
            if (exact > least) continue;
            double here = Math.abs(change[i]);
            boolean better = firstOfTies
                    ? leaving >= 0 && (exact < distance || (exact == distance && basis[i] < basis[leaving]))
                    : here > size;
            if (leaving < 0 || better) {
                leaving = i;
                size = here;
                distance = exact;
            }
        }
        if (Double.isInfinite(distance)) return -1;
        distance = Math.max(0, distance);
        double at0 = entering >= 0 ? 0 : resting(~entering);
        double stop = leaving < 0 ? 0 : stop(leaving, -way * change[leaving]);
        if (distance > 0) {
            for (int i = 0; i < rows; i++) value[i] -= way * change[i] * distance;
        }
        if (leaving < 0) {
            restsHigh[~entering] = way > 0;
        } else {
            exchange(entering, leaving, change);
            value[leaving] = at0 + way * distance;
            weigh(entering, placeLeft, inverse[leaving], change[leaving]);
            rest(placeLeft, stop);
            if (!repairing) {
                double[] pivotRow = inverse[leaving];
                for (int k = 0; k < rows; k++) dual[k] += reduced * pivotRow[k];
            }
        }
        sinceFresh++;
        return Math.abs(reduced) * distance;
    }

    private int placeLeft;

    private void rest(int variable, double stop) {
        if (variable < 0) restsHigh[~variable] = stop == high[~variable] && stop != low[~variable];
    }

    /** How far the entering variable may go before the basic one in this place, moving at this speed, reaches a limit that stops it. */
    private double room(int place, double speed, double slack) {
        double stop = stop(place, speed);
        if (Double.isInfinite(stop)) return Double.POSITIVE_INFINITY;
        return ((stop - value[place]) * Math.signum(speed) + slack) / Math.abs(speed);
    }

    /** Out of its limits it is stopped where it comes back within, and not at all when it moves farther out. */
    private double stop(int place, double speed) {
        int out = outOfLimits(place);
        int variable = basis[place];
        if (speed > 0) {
            if (out > 0) return Double.POSITIVE_INFINITY;
            return out < 0 ? lower(variable) : upper(variable);
        }
        if (out < 0) return Double.NEGATIVE_INFINITY;
        return out > 0 ? upper(variable) : lower(variable);
    }

    private double[] changeOf(int variable) {
        double[] change = new double[rows];
        if (variable < 0) {
            int row = ~variable;
            for (int i = 0; i < rows; i++) change[i] = -inverse[i][row];
            return change;
        }
        int[] in = at[variable];
        double[] by = factor[variable];
        for (int i = 0; i < rows; i++) {
            double[] row = inverse[i];
            double sum = 0;
            for (int k = 0; k < in.length; k++) sum += row[in[k]] * by[k];
            change[i] = sum;
        }
        return change;
    }

    private void exchange(int entering, int leaving, double[] change) {
        placeLeft = basis[leaving];
        if (placeLeft >= 0) placeOfColumn[placeLeft] = -1;
        else placeOfRow[~placeLeft] = -1;
        if (entering >= 0) placeOfColumn[entering] = leaving;
        else placeOfRow[~entering] = leaving;
        basis[leaving] = entering;
        double[] pivotRow = inverse[leaving];
        double pivot = change[leaving];
        int filled = 0;
        for (int k = 0; k < rows; k++) {
            if (pivotRow[k] == 0) continue;
            pivotRow[k] /= pivot;
            nonZero[filled++] = k;
        }
        boolean dense = filled * 3 > rows;
        for (int i = 0; i < rows; i++) {
            if (i == leaving || change[i] == 0) continue;
            double times = change[i];
            double[] row = inverse[i];
            if (dense) {
                for (int k = 0; k < rows; k++) row[k] -= times * pivotRow[k];
            } else {
                for (int n = 0; n < filled; n++) {
                    int k = nonZero[n];
                    row[k] -= times * pivotRow[k];
                }
            }
        }
    }

    /** The inverse anew: from row values alone, basic columns are pivoted in, few entries first, each into the free place where it is largest. */
    private void fresh() {
        int[] members = Arrays.copyOf(basis, rows);
        for (int i = 0; i < rows; i++) {
            Arrays.fill(inverse[i], 0, rows, 0);
            inverse[i][i] = -1;
            basis[i] = ~i;
        }
        int[] wanted = new int[rows];
        int count = 0;
        boolean[] keepsRow = new boolean[rows];
        for (int member : members) {
            if (member >= 0) {
                wanted[count++] = member;
                placeOfColumn[member] = -1;
            } else {
                keepsRow[~member] = true;
            }
        }
        for (int r = 0; r < rows; r++) placeOfRow[r] = r;
        Integer[] order = new Integer[count];
        for (int n = 0; n < count; n++) order[n] = wanted[n];
        Arrays.sort(order, (one, other) -> {
            int fewer = Integer.compare(at[one].length, at[other].length);
            return fewer != 0 ? fewer : Integer.compare(one, other);
        });
        for (int column : order) {
            double[] change = changeOf(column);
            int place = -1;
            for (int i = 0; i < rows; i++) {
                boolean open = basis[i] < 0 && !keepsRow[~basis[i]];
                if (open && (place < 0 || Math.abs(change[i]) > Math.abs(change[place]))) place = i;
            }
            // a column that has become dependent is left out; its row's own value takes the place
            if (place < 0 || Math.abs(change[place]) < 1e-9) continue;
            exchange(column, place, change);
            restsHigh[~placeLeft] = restsAtHigh(~placeLeft);
        }
        sinceFresh = 0;
        stale = false;
        freshValues();
    }

    private boolean restsAtHigh(int row) {
        if (Double.isInfinite(high[row])) return false;
        return restsHigh[row] || Double.isInfinite(low[row]);
    }

    private void freshValues() {
        Arrays.fill(value, 0, rows, 0);
        for (int r = 0; r < rows; r++) {
            if (placeOfRow[r] >= 0) continue;
            double rest = resting(r);
            if (rest == 0) continue;
            for (int i = 0; i < rows; i++) value[i] += inverse[i][r] * rest;
        }
    }

    private void growRows() {
        int room = rows * 2;
        given = Arrays.copyOf(given, room);
        givenMost = Arrays.copyOf(givenMost, room);
        weightOfRow = Arrays.copyOf(weightOfRow, room);
        low = Arrays.copyOf(low, room);
        high = Arrays.copyOf(high, room);
        restsHigh = Arrays.copyOf(restsHigh, room);
        placeOfRow = Arrays.copyOf(placeOfRow, room);
        basis = Arrays.copyOf(basis, room);
        value = Arrays.copyOf(value, room);
        dual = Arrays.copyOf(dual, room);
        nonZero = new int[room];
        double[][] wider = new double[room][];
        for (int i = 0; i < room; i++) wider[i] = i < rows ? Arrays.copyOf(inverse[i], room) : new double[room];
        inverse = wider;
    }
}
