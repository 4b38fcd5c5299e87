package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.ground.SurfaceFacet;
import plumbleaf.engine.quantity.Offset;

/** A flat piece of ground in the axes of a swing, with heights from grade at the pin axis. Plain numbers: this is the inside of the sweep. */
final class GroundCell {
    /** Points this close to a border count as on it: far below any shot, far above rounding. */
    private static final double BORDER_IN = 1e-9;

    private final double[] x;
    private final double[] y;
    /** Unit vectors along the sides, and their lengths. */
    private final double[] sideX;

    private final double[] sideY;
    private final double[] length;
    final double heightAtPinIn;
    final double gradeX;
    final double gradeY;

    private GroundCell(double[] x, double[] y, double heightAtPinIn, double gradeX, double gradeY) {
        this.x = x;
        this.y = y;
        this.heightAtPinIn = heightAtPinIn;
        this.gradeX = gradeX;
        this.gradeY = gradeY;
        int n = x.length;
        this.sideX = new double[n];
        this.sideY = new double[n];
        this.length = new double[n];
        for (int i = 0; i < n; i++) {
            double ex = x[(i + 1) % n] - x[i];
            double ey = y[(i + 1) % n] - y[i];
            length[i] = Math.sqrt(ex * ex + ey * ey);
            sideX[i] = ex / length[i];
            sideY[i] = ey / length[i];
        }
    }

    /** The pieces that come within reach of the pin axis. */
    static List<GroundCell> within(double reachIn, List<SurfaceFacet> facets, SwingAxes axes, Offset pinElevation) {
        return of(facets, axes, pinElevation).stream()
                .filter(cell -> cell.distanceIn() <= reachIn)
                .toList();
    }

    static List<GroundCell> of(List<SurfaceFacet> facets, SwingAxes axes, Offset pinElevation) {
        return facets.stream().map(facet -> of(facet, axes, pinElevation)).toList();
    }

    private static GroundCell of(SurfaceFacet facet, SwingAxes axes, Offset pinElevation) {
        int n = facet.corners().size();
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = axes.alongIn(facet.corners().get(i).plan());
            y[i] = axes.sideIn(facet.corners().get(i).plan());
        }
        boolean turnsLeft = turn(x, y) > 0;
        return new GroundCell(
                turnsLeft ? x : reversed(x),
                turnsLeft ? y : reversed(y),
                facet.plane().heightAt(axes.pin()).inches() - pinElevation.inches(),
                facet.plane().gradeTowards(axes.along()).ratio(),
                facet.plane().gradeTowards(axes.side()).ratio());
    }

    int sides() {
        return x.length;
    }

    double sideX(int side) {
        return sideX[side];
    }

    double sideY(int side) {
        return sideY[side];
    }

    double length(int side) {
        return length[side];
    }

    double x(int corner) {
        return x[corner % x.length];
    }

    double y(int corner) {
        return y[corner % y.length];
    }

    double heightIn(double xIn, double yIn) {
        return heightAtPinIn + gradeX * xIn + gradeY * yIn;
    }

    boolean holds(double xIn, double yIn) {
        for (int i = 0; i < x.length; i++) {
            if (cross(sideX[i], sideY[i], xIn - x[i], yIn - y[i]) < -BORDER_IN) return false;
        }
        return true;
    }

    /** The part of the line (x0, y0) + t (ux, uy), from t0 to t1, that lies in this cell: two numbers, or none. */
    double[] clip(double x0, double y0, double ux, double uy, double t0, double t1) {
        double from = t0;
        double to = t1;
        for (int i = 0; i < x.length; i++) {
            double inside = cross(sideX[i], sideY[i], x0 - x[i], y0 - y[i]);
            double gain = cross(sideX[i], sideY[i], ux, uy);
            if (Math.abs(gain) < 1e-14) {
                if (inside < -BORDER_IN) return new double[0];
            } else if (gain > 0) from = Math.max(from, -inside / gain);
            else to = Math.min(to, -inside / gain);
        }
        return from <= to + BORDER_IN ? new double[] {Math.min(from, to), Math.max(from, to)} : new double[0];
    }

    /** Distance of the pin axis from this piece in plan; zero when it stands on it. */
    private double distanceIn() {
        if (holds(0, 0)) return 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            double on = Math.max(0, Math.min(length[i], -(x[i] * sideX[i] + y[i] * sideY[i])));
            double px = x[i] + on * sideX[i];
            double py = y[i] + on * sideY[i];
            least = Math.min(least, Math.sqrt(px * px + py * py));
        }
        return least;
    }

    private static double turn(double[] x, double[] y) {
        double twice = 0;
        for (int i = 0; i < x.length; i++) {
            int next = (i + 1) % x.length;
            twice += x[i] * y[next] - x[next] * y[i];
        }
        return twice;
    }

    private static double[] reversed(double[] values) {
        double[] turned = new double[values.length];
        for (int i = 0; i < values.length; i++) turned[i] = values[values.length - 1 - i];
        return turned;
    }

    private static double cross(double ax, double ay, double bx, double by) {
        return ax * by - ay * bx;
    }
}
