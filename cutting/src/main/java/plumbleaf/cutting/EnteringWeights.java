package plumbleaf.cutting;

import java.util.Arrays;

/**
 * Which variable enters the basis: that whose gain, squared, is most against its weight, the weight telling how far a unit of it moves all others. Source: P. M. J.
 * Harris, Mathematical Programming 5 (1973) 1-28.
 */
final class EnteringWeights {
    /** No variable pays. */
    static final int NONE = Integer.MIN_VALUE;

    private static final double PRICE = 1e-9;
    private static final double OUTGROWN = 1e7;

    private final RowTable table;
    private final Basis basis;
    private double[] ofColumn;
    private double[] ofRow;

    EnteringWeights(RowTable table, Basis basis, int roomForRows, int roomForColumns) {
        this.table = table;
        this.basis = basis;
        this.ofColumn = new double[roomForColumns];
        this.ofRow = new double[roomForRows];
    }

    void addRow(int row) {
        if (row == ofRow.length) ofRow = Arrays.copyOf(ofRow, row * 2);
        ofRow[row] = 1;
    }

    void addColumn(int column) {
        if (column == ofColumn.length) ofColumn = Arrays.copyOf(ofColumn, column * 2);
        ofColumn[column] = 1;
    }

    void forget(int variable) {
        if (variable >= 0) ofColumn[variable] = 1;
    }

    /** @param first the first that pays, whatever its weight: no way round in circles */
    int best(Prices prices, boolean first) {
        int best = NONE;
        double most = 0;
        for (int c = 0; c < table.columns; c++) {
            if (basis.holdsColumn(c) || table.off[c]) continue;
            double worth = -prices.reducedCost(c);
            if (worth <= PRICE) continue;
            if (first) return c;
            double rate = worth * worth / ofColumn[c];
            if (rate > most) {
                best = c;
                most = rate;
            }
        }
        for (int r = 0; r < table.rows; r++) {
            if (basis.holdsRow(r) || table.low[r] == table.high[r]) continue;
            double dual = prices.dual(r);
            double worth = table.isFree(r) ? Math.abs(dual) : basis.restsHigh(r) ? dual : -dual;
            if (worth <= PRICE) continue;
            if (first) return ~r;
            double rate = worth * worth / ofRow[r];
            if (rate > most) {
                best = ~r;
                most = rate;
            }
        }
        return best;
    }

    /** After a pivot. */
    void weigh(int entering, int left, double[] pivotRow, double pivot) {
        double mine = entering >= 0 ? ofColumn[entering] : ofRow[~entering];
        if (mine > OUTGROWN) {
            Arrays.fill(ofColumn, 1);
            Arrays.fill(ofRow, 1);
            mine = 1;
        }
        for (int c = 0; c < table.columns; c++) {
            if (basis.holdsColumn(c) || table.off[c]) continue;
            double share = table.times(c, pivotRow);
            if (share != 0) ofColumn[c] = Math.max(ofColumn[c], share * share * mine);
        }
        for (int r = 0; r < table.rows; r++) {
            if (!basis.holdsRow(r) && pivotRow[r] != 0) ofRow[r] = Math.max(ofRow[r], pivotRow[r] * pivotRow[r] * mine);
        }
        double gone = Math.max(1, mine / (pivot * pivot));
        if (left >= 0) ofColumn[left] = gone;
        else ofRow[~left] = gone;
    }
}
