package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;

/**
 * Least clearance of a swept bottom edge over ground made of flat cells, found at the points where it can lie and nowhere else.
 *
 * <p>A bottom point at radius r, e off the leaf's plane to the swing side, stands at open angle q over the plan point {@code r u + e v} with
 * {@code u = (cos q, sin q)}, {@code v = (-sin q, cos q)}. Its clearance is {@code c(r, q) = z + b r + k q - ground}, b the slope of the bottom, k the rise
 * of a rising hinge for each radian. Within one cell c is linear in r, and where both its derivatives vanish the second ones make a saddle, so the least
 * lies on a border: the two ends of the angle (linear in r), the two ends of the edge (an arc: {@code c = A - G R cos(q + d - f) + k q}, with G the
 * steepest grade of the cell, f its direction, R and d the polar place of the point), or a side of the cell, along which
 * {@code c = A + b sqrt(p2 + s2 - e2) - g s}. All three have closed forms while k is 0; with a rising hinge the last is searched between its breaks.
 *
 * <p>On a plane with e = 0 this is {@code c = c0 + r (m_s (1 - cos q) - m_t sin q)}. Check: SweepPlaneTest at 1e-9, SweepSearchTest against dense sampling.
 */
final class Sweeps {
    private static final double ANGLE_TOLERANCE = 1e-10;
    private static final double RADIUS_TOLERANCE_IN = 1e-8;
    private static final int PIECES = 8;

    private final List<GroundCell> cells;
    private final double risePerRad;

    Sweeps(List<GroundCell> cells, double risePerRad) {
        this.cells = List.copyOf(cells);
        this.risePerRad = risePerRad;
    }

    /** Least clearance of one edge between two angles. */
    Low least(LowEdge edge, double fromRad, double toRad) {
        Low least = leastAt(edge, fromRad).orLess(leastAt(edge, toRad));
        for (GroundCell cell : cells) {
            least = leastOnArc(cell, edge, edge.fromIn(), fromRad, toRad, least);
            least = leastOnArc(cell, edge, edge.toIn(), fromRad, toRad, least);
            for (int side = 0; side < cell.sides(); side++) {
                for (double s : placesOnSide(cell, side, edge)) {
                    least = least.orLess(onSide(cell, side, s, edge, fromRad, toRad));
                }
            }
        }
        return least;
    }

    /**
     * Least clearance of a bottom as thick as it is. Beside the lines of its faces only its two short ends can hold a lesser value, over a corner of the
     * ground or, at the ends of the angle, over a side of a cell: at a fixed ground point c changes with r alone.
     */
    Low least(LowStrip strip, double fromRad, double toRad) {
        Low least = Low.NONE;
        for (LowEdge line : strip.lines()) least = least.orLess(least(line, fromRad, toRad));
        for (double end : new double[] {strip.edge().fromIn(), strip.edge().toIn()}) {
            for (GroundCell cell : cells) {
                least = least.orLess(onShortEnd(cell, strip, end, fromRad)).orLess(onShortEnd(cell, strip, end, toRad));
                for (int corner = 0; corner < cell.sides(); corner++)
                    least = least.orLess(cornerUnderShortEnd(cell, corner, strip, end, fromRad, toRad));
            }
        }
        return least;
    }

    /** Least clearance of an edge at one angle. */
    Low leastAt(LowEdge edge, double angleRad) {
        double cos = StrictMath.cos(angleRad);
        double sin = StrictMath.sin(angleRad);
        double least = Double.POSITIVE_INFINITY;
        double at = 0;
        for (GroundCell cell : cells) {
            for (double r : radiiInCell(cell, edge, cos, sin)) {
                double clear = clearance(cell, edge, r, angleRad, cos, sin);
                if (clear < least) {
                    least = clear;
                    at = r;
                }
            }
        }
        return new Low(least, at, angleRad);
    }

    /** The ground under an edge at one angle. */
    UnderEdge under(LowEdge edge, OpenAt open) {
        return new UnderEdge(this, cells, edge, open);
    }

    /** Largest clearance of an edge at one angle. */
    Low mostAt(LowEdge edge, double angleRad) {
        Low most = new Low(Double.NEGATIVE_INFINITY, 0, 0);
        double cos = StrictMath.cos(angleRad);
        double sin = StrictMath.sin(angleRad);
        for (GroundCell cell : cells) {
            for (double r : radiiInCell(cell, edge, cos, sin)) {
                double clear = clearance(cell, edge, r, angleRad, cos, sin);
                if (clear > most.clearIn()) most = new Low(clear, r, angleRad);
            }
        }
        return most;
    }

    /** Clearance at one radius and angle: over the highest of the cells there. */
    double clearance(LowEdge edge, double rIn, double angleRad) {
        return clearance(edge, rIn, OpenAt.angle(angleRad));
    }

    double clearance(LowEdge edge, double rIn, OpenAt open) {
        double least = Double.POSITIVE_INFINITY;
        double x = rIn * open.cos() - edge.sideIn() * open.sin();
        double y = rIn * open.sin() + edge.sideIn() * open.cos();
        for (GroundCell cell : cells) {
            if (cell.holds(x, y))
                least = Math.min(least, clearance(cell, edge, rIn, open.rad(), open.cos(), open.sin()));
        }
        return least;
    }

    /**
     * The first angle from closed at which any of the edges touches the ground, or {@code toRad} where none does. Touching begins where c is zero on an arc
     * or on a side of a cell, or at the closed end; between two such angles in order the sign of the least clearance cannot change, so one look half way
     * tells.
     */
    double firstContact(List<LowEdge> edges, double toRad) {
        List<Double> breaks = new ArrayList<>();
        breaks.add(0.0);
        breaks.add(toRad);
        for (LowEdge edge : edges) {
            if (risePerRad != 0) searchedZeros(edge, toRad, breaks);
            else for (GroundCell cell : cells) zeros(cell, edge, toRad, breaks);
        }
        breaks.sort(Double::compare);
        for (int i = 0; i + 1 < breaks.size(); i++) {
            double here = breaks.get(i);
            double next = breaks.get(i + 1);
            if (next - here < ANGLE_TOLERANCE) continue;
            double middle = (here + next) / 2;
            for (LowEdge edge : edges) {
                if (leastAt(edge, middle).clearIn() < 0) return here;
            }
        }
        return toRad;
    }

    private Low leastOnArc(GroundCell cell, LowEdge edge, double r, double fromRad, double toRad, Low before) {
        double grade = Math.sqrt(cell.gradeX * cell.gradeX + cell.gradeY * cell.gradeY);
        double radius = Math.sqrt(r * r + edge.sideIn() * edge.sideIn());
        if (grade * radius == 0) return before;
        double sine = -risePerRad / (grade * radius);
        if (Math.abs(sine) > 1) return before;
        double start = StrictMath.atan2(cell.gradeY, cell.gradeX) - StrictMath.atan2(edge.sideIn(), r);
        double turn = StrictMath.asin(sine);
        Low least = before;
        for (double angle : new double[] {start + turn, start + Math.PI - turn}) {
            double q = turned(angle);
            if (!between(q, fromRad, toRad)) continue;
            if (cell.holds(x(edge, r, q), y(edge, r, q)))
                least = least.orLess(new Low(clearance(cell, edge, r, q), r, q));
        }
        return least;
    }

    /** Distances along a side of a cell where the least may lie: its ends, the ends of the edge, and where c stands still. */
    private List<Double> placesOnSide(GroundCell cell, int side, LowEdge edge) {
        Side line = Side.of(cell, side);
        List<Double> places = new ArrayList<>(List.of(0.0, line.length));
        addRoots(places, line, edge.fromIn() * edge.fromIn() + edge.sideIn() * edge.sideIn());
        addRoots(places, line, edge.toIn() * edge.toIn() + edge.sideIn() * edge.sideIn());
        double perpendicular2 = line.perpendicular2() - edge.sideIn() * edge.sideIn();
        double grade = cell.gradeX * line.ux + cell.gradeY * line.uy;
        double ratio = grade * grade * perpendicular2 / (edge.slope() * edge.slope() - grade * grade);
        if (ratio >= 0 && ratio < 1e14) {
            places.add(line.foot + Math.sqrt(ratio));
            places.add(line.foot - Math.sqrt(ratio));
        }
        if (risePerRad != 0) addSearched(places, cell, side, line, edge);
        places.removeIf(s -> !(s >= -RADIUS_TOLERANCE_IN && s <= line.length + RADIUS_TOLERANCE_IN));
        return places;
    }

    /** With a rising hinge: golden section between the breaks, in pieces short enough to hold one hollow each. */
    private void addSearched(List<Double> places, GroundCell cell, int side, Side line, LowEdge edge) {
        double reach2 = edge.toIn() * edge.toIn() + edge.sideIn() * edge.sideIn() - line.perpendicular2();
        if (reach2 <= 0) return;
        double first = Math.max(0, line.foot - Math.sqrt(reach2));
        double last = Math.min(line.length, line.foot + Math.sqrt(reach2));
        if (first >= last) return;
        double step = (last - first) / PIECES;
        for (int i = 0; i < PIECES; i++) {
            double low = first + i * step;
            double high = low + step;
            for (int turn = 0; turn < 45; turn++) {
                double third = (high - low) / 3;
                double near = onSide(cell, side, low + third, edge, -4, 4).clearIn();
                double further = onSide(cell, side, high - third, edge, -4, 4).clearIn();
                if (near < further) high -= third;
                else low += third;
            }
            places.add((low + high) / 2);
        }
    }

    private static void addRoots(List<Double> places, Side line, double distance2) {
        double along2 = distance2 - line.perpendicular2();
        if (along2 < 0) return;
        places.add(line.foot + Math.sqrt(along2));
        places.add(line.foot - Math.sqrt(along2));
    }

    private Low onSide(GroundCell cell, int side, double s, LowEdge edge, double fromRad, double toRad) {
        Side line = Side.of(cell, side);
        double x = line.x0 + s * line.ux;
        double y = line.y0 + s * line.uy;
        return over(cell, x, y, edge, fromRad, toRad);
    }

    /** Clearance of an edge over a ground point of a cell, where the edge passes over it between the angles. */
    private Low over(GroundCell cell, double x, double y, LowEdge edge, double fromRad, double toRad) {
        double r2 = x * x + y * y - edge.sideIn() * edge.sideIn();
        if (r2 < -RADIUS_TOLERANCE_IN) return Low.NONE;
        double r = Math.sqrt(Math.max(0, r2));
        if (r < edge.fromIn() - RADIUS_TOLERANCE_IN || r > edge.toIn() + RADIUS_TOLERANCE_IN) return Low.NONE;
        double q = turned(StrictMath.atan2(y, x) - StrictMath.atan2(edge.sideIn(), r));
        if (!between(q, fromRad, toRad)) return Low.NONE;
        double clear = edge.heightIn(r) + risePerRad * q - cell.heightIn(x, y);
        return new Low(clear, r, q);
    }

    private Low onShortEnd(GroundCell cell, LowStrip strip, double end, double q) {
        double ux = -StrictMath.sin(q);
        double uy = StrictMath.cos(q);
        double[] part = cell.clip(end * uy, -end * ux, ux, uy, strip.nearIn(), strip.farIn());
        Low least = Low.NONE;
        for (double e : part) least = least.orLess(new Low(clearance(cell, strip.at(e), end, q), end, q));
        return least;
    }

    private Low cornerUnderShortEnd(
            GroundCell cell, int corner, LowStrip strip, double end, double fromRad, double toRad) {
        double x = cell.x(corner);
        double y = cell.y(corner);
        double side2 = x * x + y * y - end * end;
        if (side2 < 0) return Low.NONE;
        double e = Math.sqrt(side2);
        Low least = Low.NONE;
        for (double at : new double[] {e, -e}) {
            if (at < strip.nearIn() || at > strip.farIn()) continue;
            least = least.orLess(over(cell, x, y, strip.at(at), fromRad, toRad));
        }
        return least;
    }

    static double[] radiiInCell(GroundCell cell, LowEdge edge, double ux, double uy) {
        return cell.clip(-edge.sideIn() * uy, edge.sideIn() * ux, ux, uy, edge.fromIn(), edge.toIn());
    }

    private void zeros(GroundCell cell, LowEdge edge, double toRad, List<Double> breaks) {
        arcZeros(cell, edge, edge.fromIn(), toRad, breaks);
        arcZeros(cell, edge, edge.toIn(), toRad, breaks);
        for (int side = 0; side < cell.sides(); side++) sideZeros(cell, side, edge, toRad, breaks);
    }

    /** {@code c = A - G R cos(q + d - f) = 0}. */
    private void arcZeros(GroundCell cell, LowEdge edge, double r, double toRad, List<Double> breaks) {
        double swing = Math.sqrt(cell.gradeX * cell.gradeX + cell.gradeY * cell.gradeY)
                * Math.sqrt(r * r + edge.sideIn() * edge.sideIn());
        double cosine = (edge.heightIn(r) - cell.heightAtPinIn) / swing;
        if (!(Math.abs(cosine) <= 1)) return;
        double start = StrictMath.atan2(cell.gradeY, cell.gradeX) - StrictMath.atan2(edge.sideIn(), r);
        for (double turn : new double[] {StrictMath.acos(cosine), -StrictMath.acos(cosine)}) {
            double q = turned(start + turn);
            if (between(q, 0, toRad)) breaks.add(Math.max(0, Math.min(toRad, q)));
        }
    }

    /** {@code A + b sqrt(p2 + s2 - e2) - g s = 0}, a quadratic in s. */
    private void sideZeros(GroundCell cell, int side, LowEdge edge, double toRad, List<Double> breaks) {
        Side line = Side.of(cell, side);
        double g = cell.gradeX * line.ux + cell.gradeY * line.uy;
        double footX = line.x0 + line.foot * line.ux;
        double footY = line.y0 + line.foot * line.uy;
        double a = edge.zAtPinIn() - cell.heightIn(footX, footY);
        double p2 = line.perpendicular2() - edge.sideIn() * edge.sideIn();
        double b = edge.slope();
        double two = b * b - g * g;
        double one = 2 * a * g;
        double none = b * b * p2 - a * a;
        for (double s : roots(two, one, none)) {
            Low low = over(cell, footX + s * line.ux, footY + s * line.uy, edge, 0, toRad);
            boolean onSide = line.foot + s > -RADIUS_TOLERANCE_IN && line.foot + s < line.length + RADIUS_TOLERANCE_IN;
            if (onSide && Math.abs(low.clearIn()) < 1e-6) breaks.add(Math.max(0, Math.min(toRad, low.angleRad())));
        }
        if (two == 0 && one == 0) return;
        for (double s : new double[] {0, line.length}) {
            Low low = onSide(cell, side, s, edge, 0, toRad);
            if (Math.abs(low.clearIn()) < 1e-9) breaks.add(Math.max(0, Math.min(toRad, low.angleRad())));
        }
    }

    /** With a rising hinge: a quarter of a degree at a time, then halving. */
    private void searchedZeros(LowEdge edge, double toRad, List<Double> breaks) {
        int steps = Math.max(1, (int) Math.ceil(toRad / (Math.PI / 720)));
        double before = leastAt(edge, 0).clearIn();
        for (int i = 1; i <= steps; i++) {
            double low = toRad * (i - 1) / steps;
            double high = toRad * i / steps;
            double after = leastAt(edge, high).clearIn();
            if (before < 0 != after < 0) {
                boolean struckFirst = before < 0;
                for (int turn = 0; turn < 60; turn++) {
                    double middle = (low + high) / 2;
                    if (leastAt(edge, middle).clearIn() < 0 == struckFirst) low = middle;
                    else high = middle;
                }
                breaks.add(low);
            }
            before = after;
        }
    }

    private static double[] roots(double two, double one, double none) {
        if (Math.abs(two) < 1e-18) return Math.abs(one) < 1e-18 ? new double[0] : new double[] {-none / one};
        double inside = one * one - 4 * two * none;
        if (inside < 0) return new double[0];
        double half = -0.5 * (one + (one < 0 ? -1 : 1) * Math.sqrt(inside));
        return half == 0 ? new double[] {0} : new double[] {half / two, none / half};
    }

    private double clearance(GroundCell cell, LowEdge edge, double r, double q) {
        return clearance(cell, edge, r, q, StrictMath.cos(q), StrictMath.sin(q));
    }

    double clearance(GroundCell cell, LowEdge edge, double r, double q, double cos, double sin) {
        double x = r * cos - edge.sideIn() * sin;
        double y = r * sin + edge.sideIn() * cos;
        return edge.heightIn(r) + risePerRad * q - cell.heightIn(x, y);
    }

    private static double x(LowEdge edge, double r, double q) {
        return r * StrictMath.cos(q) - edge.sideIn() * StrictMath.sin(q);
    }

    private static double y(LowEdge edge, double r, double q) {
        return r * StrictMath.sin(q) + edge.sideIn() * StrictMath.cos(q);
    }

    /** The same angle between -90 and 270 degrees, where every swing lies in the middle. */
    private static double turned(double angle) {
        double turned = angle;
        while (turned < -Math.PI / 2) turned += 2 * Math.PI;
        while (turned >= 3 * Math.PI / 2) turned -= 2 * Math.PI;
        return turned;
    }

    private static boolean between(double q, double fromRad, double toRad) {
        return q >= fromRad - ANGLE_TOLERANCE && q <= toRad + ANGLE_TOLERANCE;
    }

    /** A side of a cell as a line: where it begins, its direction, its length, and how far along it the foot of the pin axis falls. */
    private record Side(double x0, double y0, double ux, double uy, double length, double foot) {
        static Side of(GroundCell cell, int side) {
            double ux = cell.sideX(side);
            double uy = cell.sideY(side);
            double foot = -(cell.x(side) * ux + cell.y(side) * uy);
            return new Side(cell.x(side), cell.y(side), ux, uy, cell.length(side), foot);
        }

        double perpendicular2() {
            double px = x0 + foot * ux;
            double py = y0 + foot * uy;
            return px * px + py * py;
        }
    }
}
