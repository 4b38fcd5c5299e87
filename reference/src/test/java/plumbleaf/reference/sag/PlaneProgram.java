package plumbleaf.reference.sag;

import java.util.ArrayList;
import java.util.List;

/**
 * A second program for plane frames, apart from the engine's: three movements a node, stiffness written out, Gauss with pivots. Loads are even ones per inch, down.
 */
final class PlaneProgram {
    private final List<double[]> nodes = new ArrayList<>();
    private final List<double[]> beams = new ArrayList<>();
    private final List<double[]> points = new ArrayList<>();
    private final List<int[]> held = new ArrayList<>();

    /** The node there, made where there is none. */
    int node(double x, double z) {
        for (int i = 0; i < nodes.size(); i++)
            if (Math.abs(nodes.get(i)[0] - x) < 0.05 && Math.abs(nodes.get(i)[1] - z) < 0.05) return i;
        nodes.add(new double[] {x, z});
        return nodes.size() - 1;
    }

    void beam(int from, int to, double ea, double ei, double downPerInch) {
        beams.add(new double[] {from, to, ea, ei, downPerInch});
    }

    void down(int node, double pounds) {
        points.add(new double[] {node, pounds});
    }

    /** @param way 0 along, 1 up, 2 turn */
    void hold(int node, int way) {
        held.add(new int[] {node, way});
    }

    /** Movements: along, up and turn (from along towards up) of every node. */
    double[] solve() {
        int n = 3 * nodes.size();
        double[][] a = new double[n][n + 1];
        for (double[] beam : beams) add(a, beam);
        for (double[] point : points) a[3 * (int) point[0] + 1][n] -= point[1];
        for (int[] each : held) {
            int row = 3 * each[0] + each[1];
            for (int c = 0; c <= n; c++) a[row][c] = 0;
            a[row][row] = 1;
        }
        return gauss(a, n);
    }

    private void add(double[][] a, double[] beam) {
        int i = (int) beam[0];
        int j = (int) beam[1];
        double dx = nodes.get(j)[0] - nodes.get(i)[0];
        double dz = nodes.get(j)[1] - nodes.get(i)[1];
        double l = Math.sqrt(dx * dx + dz * dz);
        double c = dx / l;
        double s = dz / l;
        double ea = beam[2] / l;
        double ei = beam[3] / (l * l * l);
        double[][] k = {
            {ea, 0, 0, -ea, 0, 0},
            {0, 12 * ei, 6 * ei * l, 0, -12 * ei, 6 * ei * l},
            {0, 6 * ei * l, 4 * ei * l * l, 0, -6 * ei * l, 2 * ei * l * l},
            {-ea, 0, 0, ea, 0, 0},
            {0, -12 * ei, -6 * ei * l, 0, 12 * ei, -6 * ei * l},
            {0, 6 * ei * l, 2 * ei * l * l, 0, -6 * ei * l, 4 * ei * l * l}
        };
        double[][] t = new double[6][6];
        for (int end = 0; end < 2; end++) {
            int o = 3 * end;
            t[o][o] = c;
            t[o][o + 1] = s;
            t[o + 1][o] = -s;
            t[o + 1][o + 1] = c;
            t[o + 2][o + 2] = 1;
        }
        int[] at = {3 * i, 3 * i + 1, 3 * i + 2, 3 * j, 3 * j + 1, 3 * j + 2};
        for (int p = 0; p < 6; p++)
            for (int q = 0; q < 6; q++) {
                double sum = 0;
                for (int u = 0; u < 6; u++) for (int v = 0; v < 6; v++) sum += t[u][p] * k[u][v] * t[v][q];
                a[at[p]][at[q]] += sum;
            }
        double w = -beam[4];
        double across = w * c;
        double along = w * s;
        double[] local = {
            along * l / 2, across * l / 2, across * l * l / 12, along * l / 2, across * l / 2, -across * l * l / 12
        };
        int rhs = a.length;
        for (int p = 0; p < 6; p++) for (int u = 0; u < 6; u++) a[at[p]][rhs] += t[u][p] * local[u];
    }

    private static double[] gauss(double[][] a, int n) {
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int row = column + 1; row < n; row++)
                if (Math.abs(a[row][column]) > Math.abs(a[pivot][column])) pivot = row;
            double[] swap = a[column];
            a[column] = a[pivot];
            a[pivot] = swap;
            for (int row = column + 1; row < n; row++) {
                double by = a[row][column] / a[column][column];
                if (by != 0) for (int c = column; c <= n; c++) a[row][c] -= by * a[column][c];
            }
        }
        double[] x = new double[n];
        for (int row = n - 1; row >= 0; row--) {
            double sum = a[row][n];
            for (int c = row + 1; c < n; c++) sum -= a[row][c] * x[c];
            x[row] = sum / a[row][row];
        }
        return x;
    }
}
