package plumbleaf.reference.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.strength.SecondOrder;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * A cantilever with a weight on it, and a simple span pressed at its ends: moment and bow over those without.
 * Source: AISC 360-10 Commentary Figure C-C2.3, case 2 (PD1 to PD4, printed, flexure only), and Figure C-C2.2, case 1 (PD5 to PD8, printed); on a turning foot the
 * balance of the bent shape, here.
 * Tolerance: 0.5 %, as the commentary asks; 1e-9 for the balance.
 */
class SecondOrderCheck {
    @ParameterizedTest
    @ValueSource(strings = {"PD1", "PD2", "PD3", "PD4"})
    void fixedFoot(String id) {
        Vector vector = Vectors.one("strength", id);
        double lengthIn = vector.in("L_ft") * 12;
        double factor = SecondOrder.amplification(
                Force.pounds(vector.in("P_kip") * 1000),
                vector.in("E_ksi") * 1000 * vector.in("I_in4"),
                Length.inches(lengthIn),
                1e15);
        vector.check("M_kipin", factor * vector.in("H_kip") * lengthIn);
    }

    @ParameterizedTest
    @ValueSource(strings = {"PD5", "PD6", "PD7", "PD8"})
    void pressedSpan(String id) {
        Vector vector = Vectors.one("strength", id);
        double lengthIn = vector.in("L_ft") * 12;
        double stiffness = vector.in("E_ksi") * 1000 * vector.in("I_in4");
        double loadLbPerIn = vector.in("w_kip_per_ft") * 1000 / 12;
        Force pressed = Force.pounds(vector.in("P_kip") * 1000);
        double moment = SecondOrder.spanMoment(pressed, stiffness, Length.inches(lengthIn));
        vector.check("M_kipin", moment * loadLbPerIn * lengthIn * lengthIn / 8 / 1000);
        double bow = SecondOrder.spanBow(pressed, stiffness, Length.inches(lengthIn));
        vector.check("delta_in", bow * 5 * loadLbPerIn * Math.pow(lengthIn, 4) / (384 * stiffness));
    }

    /** Close to the straight bar the series takes over from the closed form without a step. */
    @Test
    void hardlyPressedIsHardlyMore() {
        double moment = SecondOrder.spanMoment(Force.pounds(1), 1e9, Length.inches(100));
        double bow = SecondOrder.spanBow(Force.pounds(1), 1e9, Length.inches(100));
        assertThat(moment).isCloseTo(1, within(1e-5)).isGreaterThanOrEqualTo(1);
        assertThat(bow).isCloseTo(1, within(1e-4));
    }

    /** A stiff post on a soft foot is a pendulum upside down: 1 / (1 - P L / k). */
    @ParameterizedTest
    @ValueSource(doubles = {100, 400, 900})
    void stiffPostOnASoftFoot(double weightLb) {
        double k = 120_000;
        double factor = SecondOrder.amplification(Force.pounds(weightLb), 1e14, Length.inches(60), k);
        assertThat(factor).isCloseTo(1 / (1 - weightLb * 60 / k), within(1e-6));
    }

    /** Above the buckling load nothing stands. */
    @ParameterizedTest
    @ValueSource(doubles = {2100, 5000})
    void tooMuchWeightFalls(double weightLb) {
        assertThat(SecondOrder.amplification(Force.pounds(weightLb), 1e14, Length.inches(60), 120_000))
                .isInfinite();
    }
}
