package plumbleaf.engine.gate;

import plumbleaf.engine.job.TopEdge;
import plumbleaf.engine.quantity.Length;

/**
 * Where the infill ends above the straight top of a leaf's frame: a step up, and on it a curve from edge to edge.
 *
 * @param step how far the infill stands above the frame at the lowest point of its curve
 */
public record Crest(Length step, TopEdge edge) {
    static final Crest LEVEL_WITH_FRAME = new Crest(Length.ZERO, new TopEdge.Straight());

    /** The most a drawn chord may leave the curve: a sixteenth, what the saw keeps to. Common practice, no source. */
    public static final Length SAGITTA = Length.inches(1.0 / 16);

    public boolean isCurved() {
        return !edge.curve().isZero();
    }

    /**
     * Height above the frame's top at a distance from the hinge edge. The curve is an arc of a circle over its chord, {@code R = (c2 / 4 + h2) / 2h},
     * {@code y = sqrt(R2 - x2) - (R - h)}, x from the middle; on a sloping top it is that arc with every ordinate plumb over the slope. Holds for h up to
     * half of c. Source: plane geometry. Check: CrestTest.
     */
    double overFrameIn(double fromEdgeIn, Length width) {
        double arc = isCurved() ? arcIn(fromEdgeIn - width.inches() / 2, width) : 0;
        double curve = edge.match(
                straight -> 0.0, arched -> arc, scalloped -> scalloped.dip().inches() - arc);
        return step.inches() + curve;
    }

    /** Radius of the curve on a level top; zero where there is none. */
    public Length radius(Length width) {
        if (!isCurved()) return Length.ZERO;
        double c = width.inches();
        double h = edge.curve().inches();
        return Length.inches((c * c / 4 + h * h) / (2 * h));
    }

    private double arcIn(double x, Length width) {
        double radius = radius(width).inches();
        double h = edge.curve().inches();
        return Math.max(0, Math.sqrt(Math.max(0, radius * radius - x * x)) - (radius - h));
    }

    /** Area between the frame's top and the infill's: the segment {@code R2 (a - sin a) / 2} of an arch, what a scallop leaves of its rectangle. */
    double areaIn2(Length width) {
        double rectangle = step.inches() * width.inches();
        if (!isCurved()) return rectangle;
        double radius = radius(width).inches();
        double angle = 2 * StrictMath.asin(Math.min(1, width.inches() / 2 / radius));
        double segment = radius * radius * (angle - StrictMath.sin(angle)) / 2;
        return rectangle
                + edge.match(
                        straight -> 0.0,
                        arched -> segment,
                        scalloped -> scalloped.dip().inches() * width.inches() - segment);
    }

    /** Even chords enough that none leaves the curve by more than {@link #SAGITTA}. */
    int chords(Length width) {
        if (!isCurved()) return 1;
        double c = width.inches();
        int chords = 2;
        while (sagittaIn(c / chords, width) > SAGITTA.inches()) chords += 2;
        return chords;
    }

    /** How far the steepest of the drawn chords leaves the curve, measured plumb. */
    public Length sagitta(Length width) {
        return isCurved() ? Length.inches(sagittaIn(width.inches() / chords(width), width)) : Length.ZERO;
    }

    /** The chord at the edge, where the arc is steepest and leaves its chord most when measured plumb. */
    private double sagittaIn(double pieceIn, Length width) {
        double a = -width.inches() / 2;
        double most = 0;
        for (int i = 1; i < 8; i++) {
            double share = i / 8.0;
            double chord = arcIn(a, width) + share * (arcIn(a + pieceIn, width) - arcIn(a, width));
            most = Math.max(most, Math.abs(arcIn(a + share * pieceIn, width) - chord));
        }
        return most;
    }
}
