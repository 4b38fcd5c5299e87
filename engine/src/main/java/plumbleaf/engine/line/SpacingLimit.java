package plumbleaf.engine.line;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * How far apart strength lets posts stand. Later packages answer it; near free ends the wind is higher and the answer smaller. Station plus answer must never
 * fall as the station grows, or the search for posts is no longer exact.
 */
@FunctionalInterface
public interface SpacingLimit {
    /**
     * A tighter limit than this, as at a cliff or where no post is strong enough, counts as this: the findings on bays and posts then say it. Nearer than a foot the
     * holes would meet. Judgement.
     */
    Length SHORTEST = Length.feet(1);

    /** No limit but the run's own. */
    SpacingLimit NONE = (run, from) -> Length.feet(1000);

    /** The longest bay, in plan, that may begin at a station of a run. */
    Length longestFrom(String run, Offset from);

    /** Whether a bay from one station of a run may reach to another. */
    default boolean spans(String run, Offset from, Offset to) {
        return to.minus(from).inches() <= longestFrom(run, from).inches();
    }
}
