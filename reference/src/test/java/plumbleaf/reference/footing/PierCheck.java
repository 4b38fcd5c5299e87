package plumbleaf.reference.footing;

import org.junit.jupiter.api.Test;
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
 * Turn and sideways movement at grade of a rigid pier, from its 2 x 2 spring, against the closed forms; where a pole turns and what it presses the soil with, against
 * a printed sheet.
 * Source: statics of a rigid pier on springs, as B. Broms, Lateral resistance of piles in cohesive and cohesionless soils, ASCE 1964 (closed forms
 * from memory, confirmed by summing 6000 springs); pole design note after Czerniak 1957 and PCA (E8, printed; linear soil, pressure at the crown of a round pole pi/2
 * times its mean).
 * Tolerance: 0.01 %, the digits given; E8 0.4 %.
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

    /** A pole 11.67 ft deep turns about a point 8.07 ft down, and its soil is used up just there where the sheet's length says so. */
    @Test
    void whereAPoleTurns() {
        Vector sheet = Vectors.one("footing", "E8");
        double lengthFt = sheet.out("L_ft");
        double widthFt = sheet.in("D_ft");
        double pushKip = sheet.in("P_kip");
        double momentKipFt = sheet.in("M_kipft") + pushKip * sheet.in("H_ft");
        sheet.check("Ho_kip_per_ft", pushKip / widthFt);
        sheet.check("Mo_kipft_per_ft", momentKipFt / widthFt);
        double rate = 25;
        PierSpring.Motion motion = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(rate))
                .spring(new HoleSize(Length.feet(widthFt), Length.feet(lengthFt)))
                .under(Force.pounds(pushKip * 1000), Moment.poundFeet(momentKipFt * 1000));
        double turnsFt = motion.sideways().inches() / motion.turn().radians() / 12;
        sheet.check("a_ft", turnsFt);
        sheet.check("pc_ksf", pressedKsf(motion, rate, turnsFt / 2, widthFt));
        sheet.check("pt_ksf", -pressedKsf(motion, rate, lengthFt, widthFt));
        sheet.check("pc_allow_ksf", sheet.out("R_kcf") * turnsFt / 2);
        sheet.check("pt_allow_ksf", sheet.out("R_kcf") * lengthFt);
    }

    /** At a depth: soil that grows with it, times how far the pole moves there, over its width, at its crown. */
    private static double pressedKsf(PierSpring.Motion motion, double rate, double depthFt, double widthFt) {
        double movesIn = motion.sideways().inches() - motion.turn().radians() * depthFt * 12;
        double lbPerIn = rate * depthFt * 12 * movesIn;
        return Math.PI / 2 * lbPerIn * 12 / 1000 / widthFt;
    }
}
