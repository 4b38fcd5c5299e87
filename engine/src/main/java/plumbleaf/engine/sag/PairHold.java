package plumbleaf.engine.sag;

import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;

/**
 * What keeps the closed leaves of a pair where they meet.
 *
 * @param active which leaf opens first; the other one has the rod and the stop strip
 * @param swing which way both swing
 * @param rods one, on the leaf that opens last, or two, one on each
 * @param rodLbPerIn how stiff a rod is between leaf and sleeve
 * @param strip whether a stop strip keeps the first leaf from passing the other, over the whole height
 * @param stop whether a centre stop keeps the feet of both from passing it
 * @param topKeeper whether something overhead keeps the tops of both
 */
public record PairHold(
        Side active, SwingWay swing, int rods, double rodLbPerIn, boolean strip, boolean stop, boolean topKeeper) {
    public PairHold {
        if (!(rodLbPerIn > 0)) throw new IllegalArgumentException("A rod must be stiff, was " + rodLbPerIn);
    }

    /** The way, + outward, that strip and stop bar: away from the swing. */
    int barred() {
        return swing == SwingWay.IN ? 1 : -1;
    }
}
