package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.WorkedLine;

/**
 * A clearance of a swing worked out by hand at its own place: the point of the ground under the leaf, the flat piece that lies there, the leaf's bottom over it.
 * Knows nothing of how the place was found. Check: BookFollowsTest, and SwingLinesTest against the sweep.
 */
final class SwingLines {
    private final Sweeps sweeps;
    private final List<GroundCell> cells;
    private final double risePerRad;

    SwingLines(Sweeps sweeps, List<GroundCell> cells, double risePerRad) {
        this.sweeps = sweeps;
        this.cells = cells;
        this.risePerRad = risePerRad;
    }

    /** @param name of the clearance: c */
    List<WorkedLine> at(String name, LowEdge edge, Low low) {
        double r = low.rIn();
        double q = low.angleRad();
        double x = r * StrictMath.cos(q) - edge.sideIn() * StrictMath.sin(q);
        double y = r * StrictMath.sin(q) + edge.sideIn() * StrictMath.cos(q);
        return highest(x, y).map(cell -> lines(name, cell, edge, r, q, x, y)).orElseGet(List::of);
    }

    /** Of the pieces that meet there the one that the leaf is nearest to. */
    private Optional<GroundCell> highest(double x, double y) {
        return cells.stream()
                .filter(cell -> cell.holds(x, y))
                .max(Comparator.comparingDouble(cell -> cell.heightIn(x, y)));
    }

    private List<WorkedLine> lines(String name, GroundCell cell, LowEdge edge, double r, double q, double x, double y) {
        List<WorkedLine> lines = new ArrayList<>();
        double e = edge.sideIn();
        double degrees = StrictMath.toDegrees(q);
        WorkedLine cos = WorkedLine.of("cq", "cos(q \u00d7 \u03c0 / 180)")
                .put("q", degrees)
                .note("q how far it stands open, in degrees")
                .gives(StrictMath.cos(q));
        WorkedLine sin = WorkedLine.of("sq", "sin(q \u00d7 \u03c0 / 180)")
                .put("q", degrees)
                .gives(StrictMath.sin(q));
        WorkedLine along = turned("x", "r \u00d7 cq - e \u00d7 sq", r, e, cos, sin)
                .note(
                        "the point under the leaf, from the pin towards the latch; r along the leaf, e its plane off the pin"
                                + " to the swing side")
                .gives(x, "in.");
        WorkedLine side = turned("y", "r \u00d7 sq + e \u00d7 cq", r, e, cos, sin)
                .note("to the swing side")
                .gives(y, "in.");
        lines.add(cos);
        lines.add(sin);
        lines.add(along);
        lines.add(side);
        lines.addAll(ground(cell, along, side));
        WorkedLine ground = lines.get(lines.size() - 1);
        WorkedLine.Open bottom = WorkedLine.of("b", risePerRad == 0 ? "z + t \u00d7 r" : "z + t \u00d7 r + k \u00d7 q")
                .put("z", edge.zAtPinIn(), "in.")
                .put("t", edge.slope())
                .put("r", r, "in.");
        if (risePerRad != 0) bottom.put("k", risePerRad * Math.PI / 180, "in.").put("q", degrees);
        WorkedLine low = bottom.note("the leaf's bottom there; t its slope towards the latch"
                        + (risePerRad == 0 ? "" : ", k what the hinges rise a degree"))
                .gives(edge.heightIn(r) + risePerRad * q, "in.");
        lines.add(low);
        lines.add(WorkedLine.of(name, "b - g")
                .put(low)
                .put(ground)
                .gives(sweeps.clearance(cell, edge, r, q, StrictMath.cos(q), StrictMath.sin(q)), "in."));
        return lines;
    }

    private static WorkedLine.Open turned(
            String name, String formula, double r, double e, WorkedLine cos, WorkedLine sin) {
        return WorkedLine.of(name, formula)
                .put("r", r, "in.")
                .put(cos)
                .put("e", e, "in.")
                .put(sin);
    }

    /** The height of the ground from three corners of the piece: its two grades, then the plane. */
    private static List<WorkedLine> ground(GroundCell cell, WorkedLine x, WorkedLine y) {
        int far = farthest(cell);
        int next = 1;
        double x1 = cell.x(0);
        double y1 = cell.y(0);
        double z1 = cell.heightIn(x1, y1);
        double u = cell.x(next) - x1;
        double v = cell.y(next) - y1;
        double w = cell.heightIn(cell.x(next), cell.y(next)) - z1;
        double l = cell.x(far) - x1;
        double m = cell.y(far) - y1;
        double n = cell.heightIn(cell.x(far), cell.y(far)) - z1;
        String corners = "; corners of the ground there, x y z from the pin: " + corner(x1, y1, z1) + ", "
                + corner(x1 + u, y1 + v, z1 + w) + ", " + corner(x1 + l, y1 + m, z1 + n);
        WorkedLine twice = WorkedLine.of("D", "u \u00d7 m - l \u00d7 v")
                .put("u", u, "in.")
                .put("m", m, "in.")
                .put("l", l, "in.")
                .put("v", v, "in.")
                .note("u v w from the first corner to the second, l m n to the third" + corners)
                .gives(u * m - l * v, "in\u00b2");
        WorkedLine gx = WorkedLine.of("mx", "(w \u00d7 m - n \u00d7 v) / D")
                .put("w", w, "in.")
                .put("m", m, "in.")
                .put("n", n, "in.")
                .put("v", v, "in.")
                .put(twice)
                .note("grade towards the latch")
                .gives(cell.gradeX);
        WorkedLine gy = WorkedLine.of("my", "(u \u00d7 n - l \u00d7 w) / D")
                .put("u", u, "in.")
                .put("n", n, "in.")
                .put("l", l, "in.")
                .put("w", w, "in.")
                .put(twice)
                .note("grade to the swing side")
                .gives(cell.gradeY);
        WorkedLine ground = WorkedLine.of("g", "z1 + mx \u00d7 (x - x1) + my \u00d7 (y - y1)")
                .put("z1", z1, "in.")
                .put(gx)
                .put(x)
                .put("x1", x1, "in.")
                .put(gy)
                .put(y)
                .put("y1", y1, "in.")
                .note("the ground under it")
                .gives(cell.heightIn(x.value(), y.value()), "in.");
        return List.of(twice, gx, gy, ground);
    }

    /** The corner that spans the widest triangle with the first side. */
    private static int farthest(GroundCell cell) {
        int best = 2;
        double most = -1;
        for (int i = 2; i < cell.sides(); i++) {
            double area = Math.abs((cell.x(1) - cell.x(0)) * (cell.y(i) - cell.y(0))
                    - (cell.x(i) - cell.x(0)) * (cell.y(1) - cell.y(0)));
            if (area > most) {
                most = area;
                best = i;
            }
        }
        return best;
    }

    private static String corner(double x, double y, double z) {
        return "(" + WorkedLine.number(x) + ", " + WorkedLine.number(y) + ", " + WorkedLine.number(z) + ")";
    }
}
