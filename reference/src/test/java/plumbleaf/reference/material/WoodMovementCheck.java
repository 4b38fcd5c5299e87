package plumbleaf.reference.material;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodMovement;
import plumbleaf.engine.quantity.Length;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * How boards shrink and swell, and the coefficient that follows from the whole shrinkage.
 * Source: USDA Wood Handbook FPL-GTR-190 equations 13-1 and 13-2, Tables 4-3 and 13-5.
 * Tolerance: 0.1 %; the coefficient 0.00001.
 */
class WoodMovementCheck {
    @Test
    void inService() {
        Vector vector = Vectors.one("material", "MX06");
        vector.check(
                "dD_in",
                WoodMovement.inService(
                                Length.inches(vector.in("D_in")),
                                vector.in("C"),
                                Moisture.percent(vector.in("Mi")),
                                Moisture.percent(vector.in("Mf")))
                        .inches());
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX07", "MX08", "MX09"})
    void fromGreen(String id) {
        Vector vector = Vectors.one("material", id);
        vector.check(
                "dD_in",
                WoodMovement.overall(
                                Length.inches(vector.in("D_in")),
                                vector.in("S_pct"),
                                Moisture.percent(vector.in("fsp")),
                                Moisture.percent(vector.in("Mi")),
                                Moisture.percent(vector.in("Mf")))
                        .inches());
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX10", "MX11"})
    void coefficient(String id) {
        Vector vector = Vectors.one("material", id);
        vector.check("C", WoodMovement.perPct(vector.in("S_pct"), Moisture.percent(vector.in("fsp"))));
    }
}
