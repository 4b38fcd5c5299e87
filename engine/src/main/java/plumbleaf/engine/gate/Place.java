package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Offset;

/** A point of a leaf: r from the pin axis towards the latch, n towards the viewer outside, z up from grade at the pin axis. */
public record Place(Offset r, Offset n, Offset z) {
    /** A point in the leaf's own plane. */
    public static Place inPlane(double rIn, double zIn) {
        return at(rIn, 0, zIn);
    }

    static Place at(double rIn, double nIn, double zIn) {
        return new Place(Offset.inches(rIn), Offset.inches(nIn), Offset.inches(zIn));
    }
}
