package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Length;

/** How a tension rod is cut. */
public final class RodCut {
    /** What a turnbuckle leaves out between the two halves of the rod, half run in. Common practice, no source. */
    public static final Length TURNBUCKLE = Length.inches(6);

    private RodCut() {}

    /** Length of each half of a rod, from its eye to its end in the turnbuckle. */
    public static Length half(Member rod) {
        return Length.inches((rod.cutLength().inches() - TURNBUCKLE.inches()) / 2);
    }
}
