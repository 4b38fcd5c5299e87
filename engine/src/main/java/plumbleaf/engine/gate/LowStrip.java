package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;

/**
 * The flat bottom of a leaf, as thick as it is: between two low edges of the same heights.
 *
 * @param edge the line it is measured by
 * @param nearIn its face on the side away from the swing, as a distance to the swing side
 * @param farIn its face on the swing side
 */
record LowStrip(LowEdge edge, double nearIn, double farIn) {
    /** Both faces, and the plane through the pin where it lies between them: there r is largest over a fixed point of the ground. */
    List<LowEdge> lines() {
        List<LowEdge> lines = new ArrayList<>();
        lines.add(at(nearIn));
        if (nearIn < 0 && farIn > 0) lines.add(at(0));
        lines.add(at(farIn));
        return lines;
    }

    LowEdge at(double sideIn) {
        return new LowEdge(edge.fromIn(), edge.toIn(), edge.zAtPinIn(), edge.slope(), sideIn);
    }

    LowStrip shifted(double toSwingSideIn) {
        return new LowStrip(edge.shifted(toSwingSideIn), nearIn + toSwingSideIn, farIn + toSwingSideIn);
    }

    LowStrip lowered(double dropAtEndIn, double endIn, double groundRiseIn) {
        return new LowStrip(edge.lowered(dropAtEndIn, endIn, groundRiseIn), nearIn, farIn);
    }
}
