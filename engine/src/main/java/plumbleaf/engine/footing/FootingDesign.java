package plumbleaf.engine.footing;

import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.quantity.Length;

/**
 * A footing as it will be dug.
 *
 * @param depthNeeded the greatest need that binds, not rounded
 * @param governedBy the cause of that need; {@code given} where the depth was pinned
 * @param needs every need, those that do not bind on this basis too
 */
public record FootingDesign(
        String part,
        HoleSize hole,
        Length depthNeeded,
        DepthCause governedBy,
        List<DepthNeed> needs,
        List<Finding> findings) {
    public FootingDesign {
        needs = List.copyOf(needs);
        findings = List.copyOf(findings);
    }
}
