package plumbleaf.reference.frost;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.Heave;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Frost's grip on the side of a pier.
 * Source: Canadian Foundation Engineering Manual 4th ed. after Penner 1974, 65 kPa on concrete (CX32); Domaschuk, 150 kPa low bound on steel (MX45).
 * Tolerance: 0.1 and 0.2 %, the digits given.
 */
class HeaveCheck {
    @Test
    void onConcrete() {
        Vector vector = Vectors.one("frost", "CX32");
        vector.check("tau_psi", Heave.BOND_ON_CONCRETE.psi());
        vector.check(
                "uplift_lb",
                Heave.uplift(
                                Length.inches(vector.in("D_in")),
                                Length.inches(vector.in("frost_in")),
                                Heave.BOND_ON_CONCRETE)
                        .pounds());
    }

    @Test
    void onSteel() {
        Vector vector = Vectors.one("frost", "MX45");
        vector.check(
                "uplift_lb",
                Heave.uplift(
                                Length.inches(vector.in("D_in")),
                                Length.inches(vector.in("frost_in")),
                                Stress.psi(vector.in("tau_psi")))
                        .pounds());
    }
}
