package plumbleaf.reference.footing;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.footing.FallingGround;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Passive coefficient of ground that falls away from the push, and its share of level ground's.
 * Source: Coulomb passive formula with cos(beta) as printed after NAVFAC DM 7.02; numbers confirmed by a trial-wedge search.
 * Tolerance: 0.1 %, the digits given.
 */
class FallingGroundCheck {
    @ParameterizedTest
    @ValueSource(strings = {"CX25", "CX26", "CX27"})
    void passiveCoefficient(String id) {
        Vector vector = Vectors.one("footing", id);
        Slope fall = Slope.percent(vector.in("fall_percent"));
        vector.check("Kp", FallingGround.passive(fall, vector.in("phi_deg")));
        vector.check("factor_to_level", FallingGround.factor(fall, vector.in("phi_deg")));
    }
}
