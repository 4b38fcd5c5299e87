package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;

class MeshBendingTest {
    private static double ratio(double pitchIn, double uprightIn, double acrossIn, double upIn) {
        return new MeshBending(
                        Length.inches(0.192),
                        Length.inches(pitchIn),
                        Length.inches(uprightIn),
                        Length.inches(acrossIn),
                        Length.inches(upIn))
                .ratio(Pressure.psf(3));
    }

    /** One wire alone by hand: {@code p s L2 / 8} on {@code S = pi d3 / 32} at 1.6 x 36 ksi / 1.67; AISC 360-22 F11.1. */
    @Test
    void inALongNarrowOpeningTheShortWiresCarryAll() {
        double stress = 3 / 144.0 * 2 * 30 * 30 / 8 / (Math.PI * Math.pow(0.192, 3) / 32);
        assertThat(ratio(2, 2, 30 * 1000, 30)).isCloseTo(stress * 1.67 / (1.6 * 36_000), within(1e-5));
    }

    /** In a square opening with square meshes each way carries half. */
    @Test
    void inASquareOpeningBothWaysShare() {
        assertThat(ratio(2, 2, 30, 30)).isCloseTo(ratio(2, 2, 30 * 1e5, 30) / 2, within(1e-9));
    }

    @Test
    void fartherWiresCarryMoreEach() {
        assertThat(ratio(2, 6, 40, 40)).isGreaterThan(ratio(2, 2, 40, 40));
        assertThat(ratio(2, 6, 40, 50)).isCloseTo(ratio(6, 2, 50, 40), within(1e-12));
    }
}
