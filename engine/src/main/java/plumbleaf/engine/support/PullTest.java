package plumbleaf.engine.support;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * A post pulled sideways with a hand scale and read at two heights, then let go.
 *
 * @param force the pull
 * @param at height of the pull above grade
 * @param low height above grade of the lower reading
 * @param movedLow how far the post moved at the lower reading
 * @param high height above grade of the upper reading
 * @param movedHigh how far it moved there
 * @param leftOver what stayed at the upper reading after letting go
 */
public record PullTest(
        Force force, Length at, Length low, Length movedLow, Length high, Length movedHigh, Length leftOver) {}
