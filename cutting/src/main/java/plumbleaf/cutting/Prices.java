package plumbleaf.cutting;

import java.util.Arrays;

/** What each row is worth at the basis reached: by cost, or, while values are out of their limits, by how far they are out. */
final class Prices {
    private final RowTable table;
    private final Basis basis;
    private double[] dual;
    private boolean ofMisses;

    Prices(RowTable table, Basis basis, int roomForRows) {
        this.table = table;
        this.basis = basis;
        this.dual = new double[roomForRows];
    }

    void addRow(int row) {
        if (row == dual.length) dual = Arrays.copyOf(dual, row * 2);
        dual[row] = 0;
    }

    double dual(int row) {
        return dual[row];
    }

    /** Whether misses of limits are priced, not costs. */
    boolean ofMisses() {
        return ofMisses;
    }

    double reducedCost(int column) {
        double reduced = ofMisses ? 0 : table.cost[column];
        int[] in = table.at[column];
        double[] by = table.factor[column];
        for (int k = 0; k < in.length; k++) reduced -= dual[in[k]] * by[k];
        return reduced;
    }

    /** Of a column or of a row's value. */
    double reducedCostOf(int variable) {
        return variable >= 0 ? reducedCost(variable) : dual[~variable];
    }

    void anew(boolean misses) {
        ofMisses = misses;
        int rows = table.rows;
        Arrays.fill(dual, 0, rows, 0);
        for (int i = 0; i < rows; i++) {
            int variable = basis.basic[i];
            double unit = misses ? basis.outOfLimits(i) : variable >= 0 ? table.cost[variable] : 0;
            if (unit == 0) continue;
            double[] row = basis.inverse[i];
            for (int k = 0; k < rows; k++) dual[k] += unit * row[k];
        }
    }

    /** After a pivot in this place, of a variable that cost so much. */
    void follow(int place, double reduced) {
        double[] pivotRow = basis.inverse[place];
        for (int k = 0; k < table.rows; k++) dual[k] += reduced * pivotRow[k];
    }

    /** What this one value out of its limits is worth in rows. */
    void ofMissIn(int place) {
        ofMisses = true;
        double unit = basis.outOfLimits(place) < 0 ? -1 : 1;
        double[] row = basis.inverse[place];
        for (int k = 0; k < table.rows; k++) dual[k] = unit * row[k];
    }
}
