package plumbleaf.engine.frame;

/**
 * A symmetric matrix held from each row's first entry to its diagonal, and its factors {@code L D L'} (the root-free Cholesky form).
 *
 * <p>A row's fill stays inside its profile, so a good order of unknowns keeps it small. A pivot that vanishes beside the entry it came
 * from is a direction in which nothing resists: {@link #freeDirection} gives it.
 */
final class Skyline {
    /** Rounding leaves a true zero pivot near 1e-15 of its entry; a soft footing beside a rigid link is above 1e-8. */
    private static final double LOST = 1e-12;

    private final int size;
    private final int[] first;
    private final int[] start;
    private final double[] entries;
    private int lostRow = -1;

    /** @param first the column of each row's first entry that may not be zero */
    Skyline(int[] first) {
        this.size = first.length;
        this.first = first;
        this.start = new int[size];
        int count = 0;
        for (int row = 0; row < size; row++) {
            start[row] = count - first[row];
            count += row - first[row] + 1;
        }
        this.entries = new double[count];
    }

    int size() {
        return size;
    }

    /** How many numbers are held, which is what the order of unknowns is for. */
    int held() {
        return entries.length;
    }

    void add(int row, int column, double value) {
        if (row >= column) entries[start[row] + column] += value;
        else entries[start[column] + row] += value;
    }

    /** This matrix times a vector, before factors replace it. */
    double[] times(double[] vector) {
        double[] product = new double[size];
        for (int row = 0; row < size; row++) {
            int at = start[row];
            double here = vector[row];
            double sum = 0;
            for (int column = first[row]; column < row; column++) {
                double entry = entries[at + column];
                sum += entry * vector[column];
                product[column] += entry * here;
            }
            product[row] += sum + entries[at + row] * here;
        }
        return product;
    }

    Skyline copy() {
        Skyline copy = new Skyline(first);
        System.arraycopy(entries, 0, copy.entries, 0, entries.length);
        return copy;
    }

    /** Replaces the matrix by its factors. False when a pivot is lost; then {@link #freeDirection} tells which way. */
    boolean factorise() {
        for (int row = 0; row < size; row++) {
            int at = start[row];
            double diagonal = entries[at + row];
            double pivot = diagonal;
            for (int column = first[row]; column < row; column++) {
                int other = start[column];
                double sum = entries[at + column];
                for (int k = Math.max(first[row], first[column]); k < column; k++)
                    sum -= entries[at + k] * entries[other + k];
                entries[at + column] = sum;
            }
            for (int column = first[row]; column < row; column++) {
                double scaled = entries[at + column];
                double factor = scaled / entries[start[column] + column];
                entries[at + column] = factor;
                pivot -= scaled * factor;
            }
            if (!(pivot > LOST * diagonal)) {
                lostRow = row;
                return false;
            }
            entries[at + row] = pivot;
        }
        return true;
    }

    /** A movement of the unknowns that the matrix does not resist, one in the unknown where that was found out. */
    double[] freeDirection() {
        double[] direction = new double[size];
        direction[lostRow] = 1;
        for (int row = lostRow; row > 0; row--)
            for (int column = first[row]; column < row; column++)
                direction[column] -= entries[start[row] + column] * direction[row];
        return direction;
    }

    /** Solves with the factors. */
    double[] solve(double[] right) {
        double[] x = right.clone();
        for (int row = 0; row < size; row++) {
            int at = start[row];
            double sum = x[row];
            for (int column = first[row]; column < row; column++) sum -= entries[at + column] * x[column];
            x[row] = sum;
        }
        for (int row = 0; row < size; row++) x[row] /= entries[start[row] + row];
        for (int row = size - 1; row > 0; row--) {
            int at = start[row];
            double here = x[row];
            for (int column = first[row]; column < row; column++) x[column] -= entries[at + column] * here;
        }
        return x;
    }
}
