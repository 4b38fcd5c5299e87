package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;

/** The ground under one edge at one open angle: which cells lie under it, each from where to where, for whoever looks at many radii of it. */
final class UnderEdge {
    /** Points this close to a border count as under both its cells: far below any shot, far above rounding. */
    private static final double BORDER_IN = 1e-9;

    private final Sweeps sweeps;
    private final LowEdge edge;
    private final OpenAt open;
    private final List<Part> parts = new ArrayList<>();

    /** The radii of the edge that lie over a cell. */
    private record Part(GroundCell cell, double fromIn, double toIn) {}

    UnderEdge(Sweeps sweeps, List<GroundCell> cells, LowEdge edge, OpenAt open) {
        this.sweeps = sweeps;
        this.edge = edge;
        this.open = open;
        for (GroundCell cell : cells) {
            double[] radii = Sweeps.radiiInCell(cell, edge, open.cos(), open.sin());
            if (radii.length > 0) parts.add(new Part(cell, radii[0], radii[1]));
        }
    }

    /** Clearance at one radius: over the highest of the cells there. */
    double clearanceIn(double rIn) {
        double least = Double.POSITIVE_INFINITY;
        for (Part part : parts)
            if (rIn >= part.fromIn() - BORDER_IN && rIn <= part.toIn() + BORDER_IN)
                least = Math.min(least, at(part, rIn));
        return least;
    }

    /** The least at any radius; within a cell it lies at one of its two ends. */
    double leastIn() {
        double least = Double.POSITIVE_INFINITY;
        for (Part part : parts) least = Math.min(least, Math.min(at(part, part.fromIn()), at(part, part.toIn())));
        return least;
    }

    private double at(Part part, double rIn) {
        return sweeps.clearance(part.cell(), edge, rIn, open.rad(), open.cos(), open.sin());
    }
}
