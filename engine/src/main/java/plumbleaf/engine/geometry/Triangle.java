package plumbleaf.engine.geometry;

/**
 * Three points of a triangulation by their places in its list, turning left, the smallest first; and the triangle beyond each side, or {@link #NONE} at
 * the hull.
 */
public record Triangle(int a, int b, int c, int beyondAb, int beyondBc, int beyondCa) {
    /** No triangle lies beyond this side. */
    public static final int NONE = -1;

    /** Corner 0, 1 or 2. */
    public int corner(int which) {
        return which == 0 ? a : which == 1 ? b : c;
    }

    /** The triangle beyond the side from that corner to the next. */
    public int beyond(int side) {
        return side == 0 ? beyondAb : side == 1 ? beyondBc : beyondCa;
    }

    public boolean isHullSide(int side) {
        return beyond(side) == NONE;
    }
}
