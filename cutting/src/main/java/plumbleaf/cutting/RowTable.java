package plumbleaf.cutting;

import java.util.Arrays;

/** Rows with their limits and sparse columns of zero or more: what a {@link RowProgram} is about, whatever is basic in it. */
final class RowTable {
    /**
     * Limits of rows are kept this much wider, each by another amount, so that no two columns reach them at once and pivots do not go in circles. Values are off by
     * about as much; duals are not. ({@link #given} and {@link #givenMost} are the limits as given.)
     */
    private static final double EASE = 1e-6;

    int rows;
    double[] given;
    double[] givenMost;
    double[] low;
    double[] high;

    int columns;
    double[] cost;
    /** A column switched off may only be zero. */
    boolean[] off;

    /** The rows a column is in, and by how much. */
    int[][] at;

    double[][] factor;

    RowTable(int roomForRows, int roomForColumns) {
        given = new double[roomForRows];
        givenMost = new double[roomForRows];
        low = new double[roomForRows];
        high = new double[roomForRows];
        cost = new double[roomForColumns];
        off = new boolean[roomForColumns];
        at = new int[roomForColumns][];
        factor = new double[roomForColumns][];
    }

    int addRow(double least, double most) {
        if (rows == low.length) {
            int room = rows * 2;
            given = Arrays.copyOf(given, room);
            givenMost = Arrays.copyOf(givenMost, room);
            low = Arrays.copyOf(low, room);
            high = Arrays.copyOf(high, room);
        }
        limit(rows, least, most);
        return rows++;
    }

    int addColumn(double unitCost, int[] inRows, double[] factors) {
        if (columns == cost.length) {
            int room = columns * 2;
            cost = Arrays.copyOf(cost, room);
            off = Arrays.copyOf(off, room);
            at = Arrays.copyOf(at, room);
            factor = Arrays.copyOf(factor, room);
        }
        cost[columns] = unitCost;
        off[columns] = false;
        at[columns] = inRows;
        factor[columns] = factors;
        return columns++;
    }

    /** Puts a column into one row more. */
    void lengthen(int column, int row, double by) {
        int n = at[column].length;
        at[column] = Arrays.copyOf(at[column], n + 1);
        factor[column] = Arrays.copyOf(factor[column], n + 1);
        at[column][n] = row;
        factor[column][n] = by;
    }

    void limit(int row, double least, double most) {
        given[row] = least;
        givenMost[row] = most;
        double ease = EASE * (1 + ((row * 0x9E3779B9L) >>> 7 & 1023) / 1024.0);
        low[row] = least - ease;
        high[row] = most + ease;
    }

    boolean isFree(int row) {
        return Double.isInfinite(low[row]) && Double.isInfinite(high[row]);
    }

    /** What the column sums up to, each of its rows counted by so much. */
    double times(int column, double[] ofRow) {
        int[] in = at[column];
        double[] by = factor[column];
        double sum = 0;
        for (int k = 0; k < in.length; k++) sum += ofRow[in[k]] * by[k];
        return sum;
    }
}
