package plumbleaf.cutting;

/**
 * The linear program behind a cut plan: columns are zero or more (or switched off), rows are kept between two limits. Rows, columns and limits may come and
 * change at any time; it goes on from the basis reached. As {@code simplex.GrowingProgram}, but made for some hundred rows and thousands of sparse columns, and rows
 * can be added.
 * Method: revised simplex with composite phase 1; source: V. Chvatal, Linear Programming (1983), chapters 7 and 8. Check: RowProgramTest.
 */
final class RowProgram {
    private static final double PIVOT = 1e-8;

    /** Pivots without gain after which the first variable that pays enters. */
    private static final int STALLS = 400;

    private static final double NO_GAIN = 1e-12;

    /** What looks like the end is looked at again with a fresh inverse after so many pivots. */
    private static final int PIVOTS_TO_TRUST = 40;

    /** How the last {@link #minimise} ended. */
    enum End {
        OPTIMAL,
        INFEASIBLE,
        UNFINISHED
    }

    private final RowTable table;
    private final Basis basis;
    private final Prices prices;
    private final EnteringWeights weights;
    private final DualSteps dualSteps;
    private long steps;

    RowProgram(int roomForRows) {
        int rows = Math.max(8, roomForRows);
        int columns = 4 * rows;
        table = new RowTable(rows, columns);
        basis = new Basis(table, rows, columns);
        prices = new Prices(table, basis, rows);
        weights = new EnteringWeights(table, basis, rows, columns);
        dualSteps = new DualSteps(table, basis, prices, weights);
    }

    int rows() {
        return table.rows;
    }

    int columns() {
        return table.columns;
    }

    /** What it has done so far, in the steps that {@link Effort} counts: each pivot by the inverse and the columns, and each look whether one is needed. */
    long steps() {
        return steps;
    }

    private void count(int pivots) {
        steps += pivots * ((long) table.rows * table.rows / 64 + table.columns / 16 + 16);
    }

    /** A row no column is in yet. */
    int addRow(double least, double most) {
        int row = table.addRow(least, most);
        basis.addRow(row);
        prices.addRow(row);
        weights.addRow(row);
        return row;
    }

    /** A row over columns that are there already. */
    int addRow(double least, double most, double[] ofColumn) {
        int row = addRow(least, most);
        for (int c = 0; c < table.columns; c++) {
            if (ofColumn[c] == 0) continue;
            table.lengthen(c, row, ofColumn[c]);
            basis.lengthen(c, row, ofColumn[c]);
        }
        return row;
    }

    /** A column of zero or more; answers its number. */
    int addColumn(double unitCost, int[] inRows, double[] factors) {
        int column = table.addColumn(unitCost, inRows, factors);
        basis.addColumn(column);
        weights.addColumn(column);
        return column;
    }

    void limit(int row, double least, double most) {
        if (table.given[row] == least && table.givenMost[row] == most) return;
        table.limit(row, least, most);
        basis.limited(row);
    }

    /** A column switched off may only be zero. */
    void switchOff(int column, boolean isOff) {
        table.off[column] = isOff;
    }

    double low(int row) {
        return table.given[row];
    }

    double high(int row) {
        return table.givenMost[row];
    }

    double valueOf(int column) {
        return basis.valueOf(column);
    }

    /** What the least cost rises by for each unit a row's binding limit rises; after INFEASIBLE, what the missed limits do. */
    double dual(int row) {
        return prices.dual(row);
    }

    /** Goes on from the basis reached until the cost is least. */
    End minimise(int pivotLimit) {
        int left = pivotLimit;
        int stalls = 0;
        if (basis.isWorn()) basis.refresh();
        else if (basis.isStale()) basis.refreshValues();
        boolean pricesHold = false;
        steps += table.rows + table.columns / 16 + 32;
        if (basis.anyOutOfLimits()) {
            DualSteps.Outcome back = dualSteps.back(left);
            count(back.pivots());
            if (back.end() == End.INFEASIBLE) return End.INFEASIBLE;
        }
        while (true) {
            if (basis.isWorn()) {
                basis.refresh();
                pricesHold = false;
            }
            boolean broken = basis.anyOutOfLimits();
            if (broken || !pricesHold || prices.ofMisses()) {
                prices.anew(broken);
                pricesHold = true;
            }
            boolean first = stalls > STALLS;
            int entering = weights.best(prices, first);
            if (entering == EnteringWeights.NONE) {
                int since = basis.pivotsSinceFresh();
                if (since > 0 && (since > PIVOTS_TO_TRUST || prices.ofMisses())) {
                    basis.refresh();
                    pricesHold = false;
                    continue;
                }
                return prices.ofMisses() ? End.INFEASIBLE : End.OPTIMAL;
            }
            if (left-- <= 0) return End.UNFINISHED;
            count(1);
            double gain = move(entering, first);
            if (gain < 0) return End.UNFINISHED;
            stalls = gain > NO_GAIN ? 0 : stalls + 1;
        }
    }

    /** Moves the entering variable as far as limits allow; answers the gain, below zero when nothing stops it. */
    private double move(int entering, boolean firstOfTies) {
        double reduced = prices.reducedCostOf(entering);
        double way = reduced < 0 ? 1 : -1;
        double[] change = basis.changeOf(entering);
        double reach = entering >= 0 ? Double.POSITIVE_INFINITY : table.high[~entering] - table.low[~entering];
        int leaving = leaving(change, way, reach, firstOfTies);
        double distance = leaving < 0 ? reach : room(leaving, -way * change[leaving], 0);
        if (Double.isInfinite(distance)) return -1;
        distance = Math.max(0, distance);
        double from = basis.resting(entering);
        double stop = leaving < 0 ? 0 : stop(leaving, -way * change[leaving]);
        if (distance > 0) {
            for (int i = 0; i < change.length; i++) basis.value[i] -= way * change[i] * distance;
        }
        if (leaving < 0) {
            basis.restHigh(~entering, way > 0);
            basis.flipped();
        } else {
            int left = basis.pivot(entering, leaving, change, from + way * distance);
            weights.weigh(entering, left, basis.inverse[leaving], change[leaving]);
            basis.restAt(left, stop);
            if (!prices.ofMisses()) prices.follow(leaving, reduced);
        }
        return Math.abs(reduced) * distance;
    }

    /** Of the places that stop the entering variable first, give or take what rounding does, that with the largest pivot; below zero for none before its own limit. */
    private int leaving(double[] change, double way, double reach, boolean firstOfTies) {
        double least = reach;
        for (int i = 0; i < change.length; i++) {
            if (Math.abs(change[i]) >= PIVOT) least = Math.min(least, room(i, -way * change[i], Basis.FEASIBLE));
        }
        int leaving = -1;
        double size = 0;
        double distance = reach;
        for (int i = 0; i < change.length; i++) {
            if (Math.abs(change[i]) < PIVOT) continue;
            double exact = room(i, -way * change[i], 0);
            if (exact > least) continue;
            double here = Math.abs(change[i]);
            boolean better = firstOfTies
                    ? leaving >= 0 && (exact < distance || (exact == distance && basis.basic[i] < basis.basic[leaving]))
                    : here > size;
            if (leaving < 0 || better) {
                leaving = i;
                size = here;
                distance = exact;
            }
        }
        return leaving;
    }

    /** How far the entering variable may go before the basic one in this place, moving at this speed, reaches a limit that stops it. */
    private double room(int place, double speed, double slack) {
        double stop = stop(place, speed);
        if (Double.isInfinite(stop)) return Double.POSITIVE_INFINITY;
        return ((stop - basis.value[place]) * Math.signum(speed) + slack) / Math.abs(speed);
    }

    /** Out of its limits it is stopped where it comes back within, and not at all when it moves farther out. */
    private double stop(int place, double speed) {
        int out = basis.outOfLimits(place);
        int variable = basis.basic[place];
        if (speed > 0) {
            if (out > 0) return Double.POSITIVE_INFINITY;
            return out < 0 ? basis.lower(variable) : basis.upper(variable);
        }
        if (out < 0) return Double.NEGATIVE_INFINITY;
        return out > 0 ? basis.upper(variable) : basis.lower(variable);
    }
}
