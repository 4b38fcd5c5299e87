package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * What the leaf should be.
 *
 * @param infill height of the infill at the hinge, bottom edge to top edge
 * @param bottomGap from grade at the pin axis to the outline's bottom there
 * @param hingeGap between hinge post face and leaf
 * @param latchGap between leaf and latch post face
 * @param infillBelowFrame how far the infill hangs below the frame; it counts in the clearance
 */
public record LeafSpec(
        LeafShape shape,
        Length infill,
        Length bottomGap,
        Length hingeGap,
        Length latchGap,
        Length infillBelowFrame,
        int midRails) {

    public LeafSpec withBottomGap(Length gap) {
        return new LeafSpec(shape, infill, gap, hingeGap, latchGap, infillBelowFrame, midRails);
    }
}
