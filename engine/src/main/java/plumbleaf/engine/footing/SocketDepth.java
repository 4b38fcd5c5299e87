package plumbleaf.engine.footing;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;

/** How deep a steel post must stand in its concrete so that the concrete is not crushed. */
public final class SocketDepth {
    private SocketDepth() {}

    /**
     * {@code d = sqrt(6 M / (b Fp))}: bearing straight-lined over the depth, no push.
     * Source: structural engineers' mail list 2003, message 01294. Check: SocketDepthCheck (E10).
     *
     * @param width of the post
     * @param bearing allowed on the concrete
     */
    public static Length needed(Moment moment, Length width, Stress bearing) {
        return Length.inches(Math.sqrt(6 * moment.poundInches() / (width.inches() * bearing.psi())));
    }
}
