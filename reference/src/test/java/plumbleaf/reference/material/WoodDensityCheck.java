package plumbleaf.reference.material;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Weight of wood at a moisture.
 * Source: NDS Supplement 2018 section 3.1.3 (from memory).
 * Tolerance: 0.1 %.
 */
class WoodDensityCheck {
    @ParameterizedTest
    @ValueSource(strings = {"MX12", "MX13"})
    void atAMoisture(String id) {
        Vector vector = Vectors.one("material", id);
        WoodSpecies wood = StandardCatalogue.load().species().stream()
                .filter(one -> one.ovenDryGravity() == vector.in("G"))
                .findFirst()
                .orElseThrow();
        vector.check("lb_ft3", wood.densityAt(Moisture.percent(vector.in("MC"))).pcf());
    }
}
