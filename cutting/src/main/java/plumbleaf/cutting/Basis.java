package plumbleaf.cutting;

import java.util.Arrays;

/**
 * Which columns and row values of a {@link RowTable} are basic, their values, and the inverse of the basis, brought along from pivot to pivot and made afresh only
 * now and then. A variable is column c as c, or the value of row r as {@code ~r}; a row's value that is not basic rests at one of its limits.
 */
final class Basis {
    /** Rounding of some hundred pivots on numbers of size 1 to 1000. */
    static final double FEASIBLE = 1e-9;

    private static final int PIVOTS_BETWEEN_FRESH = 150;
    private static final double DEPENDENT = 1e-9;

    private final RowTable table;

    /** What is basic in each place. */
    int[] basic;

    double[] value;
    double[][] inverse;
    private int[] placeOfRow;
    private int[] placeOfColumn;
    private boolean[] restsHigh;
    private int[] nonZero;
    private int sinceFresh;
    private boolean stale;

    Basis(RowTable table, int roomForRows, int roomForColumns) {
        this.table = table;
        basic = new int[roomForRows];
        value = new double[roomForRows];
        inverse = new double[roomForRows][roomForRows];
        placeOfRow = new int[roomForRows];
        placeOfColumn = new int[roomForColumns];
        restsHigh = new boolean[roomForRows];
        nonZero = new int[roomForRows];
    }

    /** A row no column is in yet: its own value is basic. */
    void addRow(int row) {
        if (row == basic.length) growRows();
        restsHigh[row] = false;
        basic[row] = ~row;
        placeOfRow[row] = row;
        value[row] = 0;
        Arrays.fill(inverse[row], 0);
        for (int i = 0; i < row; i++) inverse[i][row] = 0;
        inverse[row][row] = -1;
    }

    /** A column has come to be in a row that was added. */
    void lengthen(int column, int row, double by) {
        int place = placeOfColumn[column];
        if (place < 0) return;
        value[row] += by * value[place];
        double[] mine = inverse[row];
        double[] from = inverse[place];
        for (int k = 0; k < row; k++) mine[k] += by * from[k];
    }

    void addColumn(int column) {
        if (column == placeOfColumn.length) placeOfColumn = Arrays.copyOf(placeOfColumn, column * 2);
        placeOfColumn[column] = -1;
    }

    /** The limits of a row have changed. */
    void limited(int row) {
        if (placeOfRow[row] >= 0) return;
        boolean noMost = Double.isInfinite(table.givenMost[row]);
        if (restsHigh[row] && noMost) restsHigh[row] = false;
        if (!restsHigh[row] && Double.isInfinite(table.given[row])) restsHigh[row] = !noMost;
        stale = true;
    }

    boolean holdsColumn(int column) {
        return placeOfColumn[column] >= 0;
    }

    boolean holdsRow(int row) {
        return placeOfRow[row] >= 0;
    }

    double valueOf(int column) {
        int place = placeOfColumn[column];
        return place < 0 ? 0 : value[place];
    }

    boolean restsHigh(int row) {
        return restsHigh[row];
    }

    void restHigh(int row, boolean high) {
        restsHigh[row] = high;
    }

    /** The variable that left came to rest where it was stopped. */
    void restAt(int variable, double stop) {
        if (variable < 0) restsHigh[~variable] = stop == table.high[~variable] && stop != table.low[~variable];
    }

    /** Where a variable that is not basic stands. */
    double resting(int variable) {
        if (variable >= 0) return 0;
        int row = ~variable;
        if (restsHigh[row]) return table.high[row];
        return Double.isInfinite(table.low[row]) ? 0 : table.low[row];
    }

    double lower(int variable) {
        return variable >= 0 ? 0 : table.low[~variable];
    }

    double upper(int variable) {
        if (variable >= 0) return table.off[variable] ? 0 : Double.POSITIVE_INFINITY;
        return table.high[~variable];
    }

    /** -1 below, +1 above, 0 within. */
    int outOfLimits(int place) {
        double slack = FEASIBLE * Math.max(1, Math.abs(value[place]));
        if (value[place] < lower(basic[place]) - slack) return -1;
        return value[place] > upper(basic[place]) + slack ? 1 : 0;
    }

    boolean anyOutOfLimits() {
        for (int i = 0; i < table.rows; i++) {
            if (outOfLimits(i) != 0) return true;
        }
        return false;
    }

    /** How far in each place the basic variable falls for each unit that this one rises. */
    double[] changeOf(int variable) {
        double[] change = new double[table.rows];
        for (int i = 0; i < change.length; i++)
            change[i] = variable < 0 ? -inverse[i][~variable] : table.times(variable, inverse[i]);
        return change;
    }

    /** One variable for that in a place, at this value; answers what left. */
    int pivot(int entering, int leaving, double[] change, double at) {
        int left = exchange(entering, leaving, change);
        value[leaving] = at;
        sinceFresh++;
        return left;
    }

    /** A row's value went from one limit to the other. */
    void flipped() {
        sinceFresh++;
    }

    int pivotsSinceFresh() {
        return sinceFresh;
    }

    boolean isWorn() {
        return sinceFresh >= PIVOTS_BETWEEN_FRESH;
    }

    boolean isStale() {
        return stale;
    }

    private int exchange(int entering, int leaving, double[] change) {
        int left = basic[leaving];
        if (left >= 0) placeOfColumn[left] = -1;
        else placeOfRow[~left] = -1;
        if (entering >= 0) placeOfColumn[entering] = leaving;
        else placeOfRow[~entering] = leaving;
        basic[leaving] = entering;
        int rows = table.rows;
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
        return left;
    }

    /** The inverse anew: from row values alone, basic columns are pivoted in, few entries first, each into the free place where it is largest. */
    void refresh() {
        int rows = table.rows;
        int[] members = Arrays.copyOf(basic, rows);
        for (int i = 0; i < rows; i++) {
            Arrays.fill(inverse[i], 0, rows, 0);
            inverse[i][i] = -1;
            basic[i] = ~i;
        }
        boolean[] keepsRow = new boolean[rows];
        for (int member : members) {
            if (member >= 0) placeOfColumn[member] = -1;
            else keepsRow[~member] = true;
        }
        for (int r = 0; r < rows; r++) placeOfRow[r] = r;
        for (int column : fewestFirst(members)) {
            double[] change = changeOf(column);
            int place = -1;
            for (int i = 0; i < rows; i++) {
                boolean open = basic[i] < 0 && !keepsRow[~basic[i]];
                if (open && (place < 0 || Math.abs(change[i]) > Math.abs(change[place]))) place = i;
            }
            // a column that has become dependent is left out; its row's own value takes the place
            if (place < 0 || Math.abs(change[place]) < DEPENDENT) continue;
            int row = ~exchange(column, place, change);
            restsHigh[row] = restsAtHigh(row);
        }
        sinceFresh = 0;
        refreshValues();
    }

    private int[] fewestFirst(int[] members) {
        return Arrays.stream(members)
                .filter(member -> member >= 0)
                .boxed()
                .sorted((one, other) -> {
                    int fewer = Integer.compare(table.at[one].length, table.at[other].length);
                    return fewer != 0 ? fewer : Integer.compare(one, other);
                })
                .mapToInt(column -> column)
                .toArray();
    }

    private boolean restsAtHigh(int row) {
        if (Double.isInfinite(table.high[row])) return false;
        return restsHigh[row] || Double.isInfinite(table.low[row]);
    }

    /** What the basic variables come to where limits have changed; the inverse does not depend on them. */
    void refreshValues() {
        stale = false;
        int rows = table.rows;
        Arrays.fill(value, 0, rows, 0);
        for (int r = 0; r < rows; r++) {
            if (placeOfRow[r] >= 0) continue;
            double rest = resting(~r);
            if (rest == 0) continue;
            for (int i = 0; i < rows; i++) value[i] += inverse[i][r] * rest;
        }
    }

    private void growRows() {
        int rows = basic.length;
        int room = rows * 2;
        basic = Arrays.copyOf(basic, room);
        value = Arrays.copyOf(value, room);
        placeOfRow = Arrays.copyOf(placeOfRow, room);
        restsHigh = Arrays.copyOf(restsHigh, room);
        nonZero = new int[room];
        double[][] wider = new double[room][];
        for (int i = 0; i < room; i++) wider[i] = i < rows ? Arrays.copyOf(inverse[i], room) : new double[room];
        inverse = wider;
    }
}
