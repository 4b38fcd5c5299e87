package plumbleaf.reference.footing;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.SocketDepth;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Depth of a steel post in its concrete by bearing.
 * Source: structural engineers' mail list 2003, message 01294 (E10).
 * Tolerance: 0.1 %, the printed digits.
 */
class SocketDepthCheck {
    @Test
    void eightInchPipe() {
        Vector vector = Vectors.one("footing", "E10");
        Length depth = SocketDepth.needed(
                Moment.poundFeet(vector.out("M_kipft") * 1000),
                Length.inches(vector.in("b_in")),
                Stress.psi(vector.out("Fp_psi")));
        vector.check("d_in", depth.inches());
    }
}
