package plumbleaf.reference.strength;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.strength.RailCheck;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Long-term sag of wood.
 * Source: NDS 2018 3.5.2, American Wood Council explanation (CX33).
 * Tolerance: 0.01 %.
 */
class RailCreepCheck {
    @Test
    void seasonedAndWet() {
        Vector vector = Vectors.one("strength", "CX33");
        double lasting = vector.in("dLT_in");
        double brief = vector.in("dST_in");
        vector.check("seasoned_in", RailCheck.longTerm(lasting, brief, RailCheck.CREEP_SEASONED));
        vector.check("wet_in", RailCheck.longTerm(lasting, brief, RailCheck.CREEP_WET));
    }
}
