package plumbleaf.engine.job;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * What the leaf should be. Its frame is straight; the infill may rise over it or dip into a curve.
 *
 * @param shape of the frame
 * @param top how the infill's top runs from edge to edge
 * @param infill height of the infill at the hinge edge, bottom edge to top edge
 * @param bottomGap from grade at the pin axis to the outline's bottom there
 * @param hingeGap between hinge post face and leaf
 * @param latchGap between leaf and latch post face
 * @param infillBelowFrame how far the infill hangs below the frame; it counts in the clearance
 * @param infillAboveFrame how far the infill stands above the frame at its edges, or at the low point of a scallop
 * @param midRails rails between the bottom and the top one
 * @param midRailsAt heights of their centrelines above the outline's bottom at the hinge edge, from the lowest up; empty where they stand evenly
 * @param fill what fills the frame
 */
public record LeafSpec(
        LeafShape shape,
        TopEdge top,
        Length infill,
        Length bottomGap,
        Length hingeGap,
        Length latchGap,
        Length infillBelowFrame,
        Length infillAboveFrame,
        int midRails,
        List<Length> midRailsAt,
        LeafFill fill) {
    public LeafSpec {
        midRailsAt = List.copyOf(midRailsAt);
        if (!midRailsAt.isEmpty() && midRailsAt.size() != midRails)
            throw new IllegalArgumentException("Heights of " + midRailsAt.size() + " rails were given for " + midRails);
    }

    /** With a straight top, its rails evenly spaced, filled as the fence is. */
    public LeafSpec(
            LeafShape shape,
            Length infill,
            Length bottomGap,
            Length hingeGap,
            Length latchGap,
            Length infillBelowFrame,
            int midRails) {
        this(
                shape,
                new TopEdge.Straight(),
                infill,
                bottomGap,
                hingeGap,
                latchGap,
                infillBelowFrame,
                Length.ZERO,
                midRails,
                List.of(),
                new LeafFill.AsFence());
    }

    /** Height of the frame at the hinge edge. */
    public Length frameHeight() {
        double frame = infill.inches()
                - infillBelowFrame.inches()
                - infillAboveFrame.inches()
                - top.aboveLowest().inches();
        return Length.inches(Math.max(0, frame));
    }

    public LeafSpec withInfill(Length high) {
        return new LeafSpec(
                shape,
                top,
                high,
                bottomGap,
                hingeGap,
                latchGap,
                infillBelowFrame,
                infillAboveFrame,
                midRails,
                midRailsAt,
                fill);
    }

    public LeafSpec withBottomGap(Length gap) {
        return new LeafSpec(
                shape,
                top,
                infill,
                gap,
                hingeGap,
                latchGap,
                infillBelowFrame,
                infillAboveFrame,
                midRails,
                midRailsAt,
                fill);
    }

    public LeafSpec withShape(LeafShape other) {
        return new LeafSpec(
                other,
                top,
                infill,
                bottomGap,
                hingeGap,
                latchGap,
                infillBelowFrame,
                infillAboveFrame,
                midRails,
                midRailsAt,
                fill);
    }

    public LeafSpec withFill(LeafFill other) {
        return new LeafSpec(
                shape,
                top,
                infill,
                bottomGap,
                hingeGap,
                latchGap,
                infillBelowFrame,
                infillAboveFrame,
                midRails,
                midRailsAt,
                other);
    }
}
