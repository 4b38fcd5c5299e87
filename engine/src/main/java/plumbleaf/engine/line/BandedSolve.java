package plumbleaf.engine.line;

/**
 * A symmetric positive matrix whose rows reach two places to either side, as {@code L D L'}: what couples each gap of a fence with its next two neighbours.
 * Source: G. H. Golub and C. F. Van Loan, Matrix Computations, 4th ed., section 4.3.6. Check: FairingTest.
 */
final class BandedSolve {
    private final int size;
    private final double[] diagonal;
    private final double[] next;
    private final double[] second;

    BandedSolve(int size) {
        this.size = size;
        this.diagonal = new double[size];
        this.next = new double[size];
        this.second = new double[size];
    }

    void clear(double onDiagonal) {
        for (int i = 0; i < size; i++) {
            diagonal[i] = onDiagonal;
            next[i] = 0;
            second[i] = 0;
        }
    }

    /** Adds {@code weight v v'} for a row v of up to three neighbouring numbers. */
    void add(int first, double a, double b, double c, double weight) {
        diagonal[first] += weight * a * a;
        if (first + 1 < size) {
            diagonal[first + 1] += weight * b * b;
            next[first] += weight * a * b;
        }
        if (first + 2 < size) {
            diagonal[first + 2] += weight * c * c;
            next[first + 1] += weight * b * c;
            second[first] += weight * a * c;
        }
    }

    /** Turns the matrix into its factors; to be asked for once after the last {@link #add}. */
    void factor() {
        for (int i = 0; i < size; i++) {
            double one = i > 0 ? next[i - 1] : 0;
            double two = i > 1 ? second[i - 2] : 0;
            double pivot = diagonal[i];
            if (i > 0) pivot -= one * one * diagonal[i - 1];
            if (i > 1) pivot -= two * two * diagonal[i - 2];
            diagonal[i] = pivot;
            double beside = i > 0 ? one * second[i - 1] * diagonal[i - 1] : 0;
            next[i] = (next[i] - beside) / pivot;
            second[i] = second[i] / pivot;
        }
    }

    /** Solves in place. */
    void solve(double[] right) {
        for (int i = 0; i < size; i++) {
            if (i > 0) right[i] -= next[i - 1] * right[i - 1];
            if (i > 1) right[i] -= second[i - 2] * right[i - 2];
        }
        for (int i = size - 1; i >= 0; i--) {
            right[i] /= diagonal[i];
            if (i + 1 < size) right[i] -= next[i] * right[i + 1];
            if (i + 2 < size) right[i] -= second[i] * right[i + 2];
        }
    }
}
