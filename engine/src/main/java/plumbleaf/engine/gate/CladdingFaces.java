package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/** How thick a leaf is, and on which side of its plane. */
final class CladdingFaces {
    private CladdingFaces() {}

    /** Size of a frame tube across the leaf. */
    static Length frameThickness(Section tube) {
        return tube.isRound() ? tube.depth() : tube.width();
    }

    /** +1 when the infill is on the viewer's side, outside; -1 when it is inside. */
    static int side(Cladding.Wood wood) {
        return Infill.isOutside(wood.face()) ? 1 : -1;
    }

    /**
     * The bottoms that pass over the ground: of the frame with nailers and pickets on it, and of pickets that hang lower.
     *
     * @param viewerSign as in {@link SwingAxes}
     */
    static List<LowStrip> strips(Outline outline, GateParts parts, int viewerSign) {
        double half = frameThickness(parts.frame()).inches() / 2;
        double below = outline.infillBelow().inches();
        LowEdge bottom = edge(outline, 0);
        List<LowStrip> frame = List.of(strip(bottom, -half, half, viewerSign));
        return parts.cladding()
                .match(
                        open -> frame,
                        wood -> {
                            int side = side(wood);
                            double nailer = wood.style().railThickness().inches();
                            double board = wood.style().boardThickness().inches();
                            List<LowStrip> strips = new ArrayList<>();
                            boolean bothSides = wood.style().bothSides();
                            if (!bothSides && wood.style().spacing().laps()) board *= 2;
                            board += wood.trim().footOnFace().inches();
                            double face = half + nailer + (below > 0 ? 0 : board);
                            strips.add(strip(bottom, -side * (bothSides ? face : half), side * face, viewerSign));
                            if (below > 0 && bothSides)
                                strips.add(strip(
                                        edge(outline, below),
                                        -side * (half + nailer),
                                        -side * (half + nailer + board),
                                        viewerSign));
                            if (below > 0) {
                                double from = side * (half + nailer);
                                strips.add(strip(edge(outline, below), from, from + side * board, viewerSign));
                            }
                            return List.copyOf(strips);
                        },
                        pickets -> steel(outline, pickets.section().width().inches() / 2, frame, viewerSign),
                        mesh -> frame,
                        sheet -> frame);
    }

    /** The frame, and below it what hangs lower in its middle. */
    private static List<LowStrip> steel(Outline outline, double halfIn, List<LowStrip> frame, int viewerSign) {
        double below = outline.infillBelow().inches();
        if (!(below > 0)) return frame;
        List<LowStrip> strips = new ArrayList<>(frame);
        strips.add(strip(edge(outline, below), -halfIn, halfIn, viewerSign));
        return List.copyOf(strips);
    }

    /** The lowest line in the leaf's plane, infill counted. */
    static LowEdge plane(Outline outline) {
        return edge(outline, outline.infillBelow().inches());
    }

    private static LowEdge edge(Outline outline, double belowIn) {
        return new LowEdge(
                Math.max(0, outline.hingeEdge().inches()),
                outline.latchEdge().inches(),
                outline.bottomAtPin().inches() - belowIn,
                outline.bottom().ratio(),
                0);
    }

    private static LowStrip strip(LowEdge edge, double n1, double n2, int viewerSign) {
        double a = n1 * viewerSign;
        double b = n2 * viewerSign;
        return new LowStrip(edge, Math.min(a, b), Math.max(a, b));
    }
}
