package plumbleaf.reference.frost;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.FrostPenetration;
import plumbleaf.engine.quantity.Density;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Depth of frost by the modified Berggren equation, and the soil conductivities that go into it.
 * Source: UFC 3-130-06 and TM 5-852-6 worked example (5.8 ft with the chart's lambda, from memory; closed form by a University of Alaska notebook);
 * Kersten 1949 fits against chart readings on a public pavement page.
 * Tolerance: 0.2 %, the digits given.
 */
class FrostPenetrationCheck {
    private static FrostPenetration soil(Vector vector) {
        return new FrostPenetration(
                Density.pcf(vector.in("g_pcf")), vector.in("w_pct"), vector.in("kf"), vector.in("ku"));
    }

    private static FrostPenetration.Winter winter(Vector vector) {
        return new FrostPenetration.Winter(vector.in("MAT_F"), vector.in("n") * vector.in("AFI"), vector.in("t_d"));
    }

    @Test
    void closedForm() {
        Vector vector = Vectors.one("frost", "MX40");
        FrostPenetration soil = soil(vector);
        vector.check("L", soil.latentHeat());
        vector.check("C", soil.heatCapacity());
        vector.check("lam", soil.lambda(winter(vector)));
        vector.check("X_ft", soil.depth(winter(vector)).inFeet());
        Vector second = Vectors.one("frost", "MX42");
        second.check("lam", soil(second).lambda(winter(second)));
        second.check("X_ft", soil(second).depth(winter(second)).inFeet());
    }

    @Test
    void withTheChartsLambda() {
        Vector vector = Vectors.one("frost", "MX41");
        vector.check(
                "X_ft", soil(vector).depth(winter(vector), vector.in("lam")).inFeet());
    }

    @Test
    void conductivities() {
        Vector clay = Vectors.one("frost", "MX43");
        FrostPenetration silt = FrostPenetration.siltOrClay(Density.pcf(clay.in("g_pcf")), clay.in("w_pct"));
        clay.check("ku", silt.unfrozenConductivity());
        clay.check("kf", silt.frozenConductivity());
        Vector sandRow = Vectors.one("frost", "MX44");
        FrostPenetration sand = FrostPenetration.sand(Density.pcf(sandRow.in("g_pcf")), sandRow.in("w_pct"));
        sandRow.check("ku", sand.unfrozenConductivity());
        sandRow.check("kf", sand.frozenConductivity());
    }
}
