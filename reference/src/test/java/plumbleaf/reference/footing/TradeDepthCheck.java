package plumbleaf.reference.footing;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.TradeDepth;
import plumbleaf.engine.quantity.Length;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Hole and depth of the chain-link installation standard.
 * Source: ASTM F567-07, rule with numbers put in (E12).
 * Tolerance: 0.1 %.
 */
class TradeDepthCheck {
    @Test
    void sixFootFence() {
        Vector vector = Vectors.one("footing", "E12");
        vector.check(
                "depth_in",
                TradeDepth.depth(Length.feet(vector.in("fence_height_ft"))).inches());
        vector.check(
                "hole_dia_in",
                TradeDepth.hole(Length.inches(vector.in("post_od_in"))).inches());
    }
}
