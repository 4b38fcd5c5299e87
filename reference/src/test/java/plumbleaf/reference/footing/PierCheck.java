package plumbleaf.reference.footing;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Turn and sideways movement at grade of a rigid pier, from its 2 x 2 spring, against the closed forms.
 * Source: statics of a rigid pier on springs, as B. Broms, Lateral resistance of piles in cohesive and cohesionless soils, ASCE 1964 (closed forms
 * from memory, confirmed by summing 6000 springs).
 * Tolerance: 0.01 %, the digits given.
 */
class PierCheck {
    @ParameterizedTest
    @ValueSource(strings = {"R1", "R2", "R3", "R4"})
    void turnAndMovementAtGrade(String id) {
        Vector vector = Vectors.one("footing", id);
        boolean constant = vector.inputs().containsKey("k_pci");
        double diameterIn = constant ? vector.in("D_in") : 12;
        SoilStiffness soil = constant
                ? new SoilStiffness.Constant(Stress.psi(vector.in("k_pci") * diameterIn))
                : new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(vector.in("nh_pci")));
        PierSpring spring = soil.spring(new HoleSize(Length.inches(diameterIn), Length.inches(vector.in("L_in"))));
        PierSpring.Motion motion =
                spring.under(Force.pounds(vector.in("H_lb")), Moment.poundInches(vector.in("M_lbin")));
        vector.check("theta_rad", motion.turn().radians());
        vector.check("y0_in", motion.sideways().inches());
    }
}
