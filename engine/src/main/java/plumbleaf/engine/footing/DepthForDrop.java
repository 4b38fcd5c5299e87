package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Searches the least depth that keeps a gate's drop within its limit; the drop itself is the business of a later package. */
public final class DepthForDrop {
    /** The drop of the latch corner with a footing of this depth. */
    public interface DropAt {
        Offset drop(Length depth);
    }

    private DepthForDrop() {}

    /**
     * The least depth on the steps whose drop is within the limit; the deepest tried where none is, so that the caller finds the drop still too large.
     *
     * @param from shallowest depth to try
     * @param most deepest
     */
    public static Length least(DropAt drop, Offset limit, Length from, Length step, Length most) {
        Length depth = from;
        while (drop.drop(depth).compareTo(limit) > 0 && depth.plus(step).compareTo(most) <= 0) depth = depth.plus(step);
        return depth;
    }
}
