package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Offset;

/**
 * The drop of the free latch corner by when it comes, + down. The first two are the total; the last comes on top.
 *
 * @param camber the leaf's own part, built into the jig
 * @param atRelease the rest, which comes when the blocks are pulled: the hang allowance
 */
public record ByTime(Offset camber, Offset atRelease, AfterHanging afterHanging) {
    /** A jig is not set finer. Judgement. */
    private static final double JIG_IN = 1.0 / 32;

    public boolean isCambered() {
        return camber.inches() >= JIG_IN;
    }
}
