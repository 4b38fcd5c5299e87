package plumbleaf.engine.gate;

/**
 * A straight line along the bottom of a leaf, from the hinge side to the latch side. Plain numbers: this is the inside of the sweep.
 *
 * @param fromIn r where it begins, zero or more
 * @param toIn r where it ends
 * @param zAtPinIn height produced to r = 0, from grade at the pin axis
 * @param slope rise over run towards the latch
 * @param sideIn how far off the pin it lies, to the swing side
 */
record LowEdge(double fromIn, double toIn, double zAtPinIn, double slope, double sideIn) {
    double heightIn(double rIn) {
        return zAtPinIn + slope * rIn;
    }

    LowEdge shifted(double toSwingSideIn) {
        return new LowEdge(fromIn, toIn, zAtPinIn, slope, sideIn + toSwingSideIn);
    }

    /** The same line once the leaf has dropped and the ground has risen. */
    LowEdge lowered(double dropAtEndIn, double endIn, double groundRiseIn) {
        return new LowEdge(fromIn, toIn, zAtPinIn - groundRiseIn, slope - dropAtEndIn / endIn, sideIn);
    }
}
