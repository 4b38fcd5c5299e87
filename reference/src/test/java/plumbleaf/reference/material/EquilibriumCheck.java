package plumbleaf.reference.material;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.material.Equilibrium;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * The moisture wood settles at, for air from freezing to a hot dry summer.
 * Source: USDA Wood Handbook FPL-GTR-190, equation 4-5 and Table 4-2 (9.2 % printed at 70 F and 50 %); FPL-RN-0268 for the constants in degrees Celsius.
 * Tolerance: 0.02 % of moisture.
 */
class EquilibriumCheck {
    @ParameterizedTest
    @ValueSource(strings = {"MX01", "MX02", "MX03", "MX04"})
    void settlesAtTheTabulatedMoisture(String id) {
        Vector vector = Vectors.one("material", id);
        vector.check(
                "EMC_pct", Equilibrium.of(vector.in("T_F"), vector.in("RH")).percent());
    }

    @ParameterizedTest
    @ValueSource(strings = "MX05")
    void agreesWithTheConstantsInCelsius(String id) {
        Vector vector = Vectors.one("material", id);
        vector.check(
                "EMC_pct",
                Equilibrium.of(32 + 1.8 * vector.in("T_C"), vector.in("RH")).percent());
    }
}
