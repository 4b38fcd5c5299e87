package plumbleaf.reference.connection;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.strength.Bolt;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Bolts in shear and tension together, and each alone.
 * Source: AISC Design Examples, Example J.3 (J3, as a public verification of another program has it); AISC Manual Tables 7-1 and 7-2, ASD (J4, from memory).
 * Tolerance: 0.5 %, the printed digits.
 */
class BoltCheck {
    private static Bolt bolt(Vector vector) {
        return new Bolt(Length.inches(vector.in("d_in")), Stress.ksi(vector.in("Fu_ksi")), true);
    }

    /** Three quarters of an inch, 8.0 kip of shear beside the tension, load and resistance factors. */
    @Test
    void tensionLeftBesideAShear() {
        Vector vector = Vectors.one("connection", "J3");
        Force shear = Force.pounds(vector.in("Vu_kip") * 1000);
        vector.check(
                "Rn_kip",
                bolt(vector).nominalTensionBeside(shear, vector.in("phi")).pounds() / 1000);
    }

    @Test
    void shearAndTensionAlone() {
        Vector vector = Vectors.one("connection", "J4");
        Bolt bolt = bolt(vector);
        vector.check("shear_kip", bolt.nominalShear().pounds() / Bolt.SAFETY / 1000);
        vector.check("tension_kip", bolt.nominalTension().pounds() / Bolt.SAFETY / 1000);
    }
}
