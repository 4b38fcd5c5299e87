package plumbleaf.engine.sag;

/** A few equations at once. */
final class Elimination {
    private Elimination() {}

    /** Gaussian elimination with the largest pivot of each column; overwrites what it is given. Any text on numerical analysis. */
    static double[] solve(double[][] m, double[] right) {
        int n = right.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++)
                if (Math.abs(m[row][column]) > Math.abs(m[pivot][column])) pivot = row;
            double[] swapped = m[column];
            m[column] = m[pivot];
            m[pivot] = swapped;
            double held = right[column];
            right[column] = right[pivot];
            right[pivot] = held;
            if (m[column][column] == 0) throw new IllegalStateException("The leaf is held by nothing");
            for (int row = column + 1; row < n; row++) {
                double factor = m[row][column] / m[column][column];
                if (factor == 0) continue;
                for (int i = column; i < n; i++) m[row][i] -= factor * m[column][i];
                right[row] -= factor * right[column];
            }
        }
        double[] x = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double sum = right[row];
            for (int i = row + 1; i < n; i++) sum -= m[row][i] * x[i];
            x[row] = sum / m[row][row];
        }
        return x;
    }
}
