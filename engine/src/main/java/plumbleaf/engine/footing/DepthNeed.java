package plumbleaf.engine.footing;

import java.util.Optional;
import plumbleaf.engine.quantity.Length;

/**
 * A depth that one cause asks for, not rounded.
 *
 * @param binds whether the footing must be that deep on the job's basis
 * @param lateral how a lateral depth was worked out; empty for another cause, and where nothing pushes
 */
public record DepthNeed(DepthCause cause, Length depth, boolean binds, Optional<LateralWork> lateral) {
    static DepthNeed of(DepthCause cause, Length depth) {
        return new DepthNeed(cause, depth, true, Optional.empty());
    }

    DepthNeed notBinding() {
        return new DepthNeed(cause, depth, false, lateral);
    }
}
