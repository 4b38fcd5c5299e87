package plumbleaf.reference.footing;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.FallingGround;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Where a rigid pole in soil whose modulus grows with depth turns, and what it presses the soil with: from the pier's spring, against a pole of a published method. The
 * method asks pi/2 of the mean pressure in front of a round pole, and half the turning point's depth for the place that governs.
 * Source: pole design note after Czerniak 1957 and PCA (E8).
 * Tolerance: the row's, 0.4 %, of printed values that were rounded on their way.
 */
class PolePressureCheck {
    private static final double FT = 12;

    /** Any rate will do: pressures and the turning point do not depend on it. */
    private static final double ANY_RATE = 20;

    private final Vector note = Vectors.one("footing", "E8");
    private final double pushKip = note.in("P_kip") / note.in("D_ft");
    private final double momentKipFt = (note.in("P_kip") * note.in("H_ft") + note.in("M_kipft")) / note.in("D_ft");

    @Test
    void turnsWhereTheNoteSays() {
        note.check("Ho_kip_per_ft", pushKip);
        note.check("Mo_kipft_per_ft", momentKipFt);
        note.check("E_ft", momentKipFt / pushKip);
        double length = note.out("L_ft");
        PierSpring.Motion motion = motion(length);
        note.check("a_ft", motion.sideways().inches() / motion.turn().radians() / FT);
        note.check("pc_ksf", pressure(motion, note.out("a_ft") / 2));
        note.check("pt_ksf", -pressure(motion, length));
    }

    /** The pole is as long as makes its pressure at half the turning point what the soil there bears, R times the depth. */
    @Test
    void isAsLongAsTheNoteSays() {
        double bears = note.in("gamma_kcf") * FallingGround.passive(Slope.ZERO, note.in("phi_deg"));
        note.check("R_kcf", bears);
        double low = 3;
        double high = 40;
        for (int i = 0; i < 60; i++) {
            double length = (low + high) / 2;
            PierSpring.Motion motion = motion(length);
            double half = motion.sideways().inches() / motion.turn().radians() / FT / 2;
            if (pressure(motion, half) > bears * half) low = length;
            else high = length;
        }
        note.check("L_ft", low);
        note.check("pc_allow_ksf", bears * note.out("a_ft") / 2);
        note.check("pt_allow_ksf", bears * note.out("L_ft"));
    }

    private PierSpring.Motion motion(double lengthFt) {
        PierSpring spring = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(ANY_RATE))
                .spring(new HoleSize(Length.feet(note.in("D_ft")), Length.feet(lengthFt)));
        return spring.under(Force.pounds(pushKip * 1000), Moment.poundInches(momentKipFt * 1000 * FT));
    }

    /** Of a strip one foot wide at a depth, + forwards: rate, depth and movement there. */
    private static double pressure(PierSpring.Motion motion, double depthFt) {
        double depthIn = depthFt * FT;
        double perInch =
                ANY_RATE * depthIn * (motion.sideways().inches() - motion.turn().radians() * depthIn);
        return Math.PI / 2 * perInch * FT / 1000;
    }
}
