package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;

/** A nailer's bolt by hand, and that it grows with what it is made of. */
class NailerBoltTest {
    private static double allowed(double boltIn, double gravity, double nailerIn, double wallIn) {
        return NailerBolt.allowed(Length.inches(boltIn), gravity, Length.inches(nailerIn), Length.inches(wallIn))
                .pounds();
    }

    /**
     * 3/8 in. through 1-1/2 in. of cedar, G 0.36, on a 0.083 wall. Fe = 6100 x 0.36^1.45 / sqrt(0.375) = 2,264 psi. By hand, mode II governs: Re = 0.0366, Rt =
     * 18.07, k1 = 0.4545 (of the equation, with 1 + Re below), Z = k1 D ls Fes / (3.6 x 1.25).
     */
    @Test
    void byHand() {
        double d = 0.375;
        double fem = 6_100 * StrictMath.pow(0.36, 1.45) / Math.sqrt(d);
        double fes = 61_850;
        double re = fem / fes;
        double rt = 1.5 / 0.083;
        double k1 =
                (Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
        double two = k1 * d * 0.083 * fes / (3.6 * 1.25);
        assertThat(fem).isCloseTo(2_264, within(2.0));
        assertThat(allowed(0.375, 0.36, 1.5, 0.083)).isLessThanOrEqualTo(two * 0.9 * 0.7 + 1e-9);
        assertThat(allowed(0.375, 0.36, 1.5, 0.083)).isBetween(40.0, 120.0);
    }

    @Test
    void aThickerBoltDenserWoodAndMoreWallCarryMore() {
        double plain = allowed(0.375, 0.36, 1.5, 0.083);
        assertThat(allowed(0.5, 0.36, 1.5, 0.083)).isGreaterThan(plain);
        assertThat(allowed(0.375, 0.5, 1.5, 0.083)).isGreaterThan(plain);
        assertThat(allowed(0.375, 0.36, 1.5, 0.12)).isGreaterThanOrEqualTo(plain);
        assertThat(NailerBolt.edgeNeeded(Length.inches(0.375)).inches()).isEqualTo(1.5);
    }
}
