package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** The exact search over rough ground against sampling: never above any sample, and reached by fine sampling round its own place. */
class SweepSearchTest {
    private static final int SAMPLES = 40_000;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void noSampleOfAnEdgeLiesBelow(long seed) {
        Random random = new Random(seed);
        double rise = seed % 3 == 0 ? 1.2 : 0;
        Sweeps sweeps = rough(seed, rise);
        LowEdge edge = edge(random);
        double opens = Math.PI / 2 * (1 + random.nextDouble());
        Low least = sweeps.least(edge, 0, opens);
        assertThat(sweeps.clearance(edge, least.rIn(), least.angleRad())).isCloseTo(least.clearIn(), within(1e-7));
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < SAMPLES; i++) {
            double r = edge.fromIn() + (edge.toIn() - edge.fromIn()) * random.nextDouble();
            double q = opens * random.nextDouble();
            best = Math.min(best, sweeps.clearance(edge, r, q));
        }
        assertThat(best).isGreaterThanOrEqualTo(least.clearIn() - 1e-7);
        assertThat(best).isCloseTo(least.clearIn(), within(0.3));
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25, 26, 27, 28})
    void noSampleOfAThickBottomLiesBelow(long seed) {
        Random random = new Random(seed);
        Sweeps sweeps = rough(seed, 0);
        LowStrip strip = new LowStrip(edge(random), -1 - 4 * random.nextDouble(), 1 + 4 * random.nextDouble());
        double opens = Math.PI / 2;
        Low least = sweeps.least(strip, 0, opens);
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < SAMPLES; i++) {
            double r =
                    strip.edge().fromIn() + (strip.edge().toIn() - strip.edge().fromIn()) * random.nextDouble();
            double e = strip.nearIn() + (strip.farIn() - strip.nearIn()) * random.nextDouble();
            best = Math.min(best, sweeps.clearance(strip.at(e), r, opens * random.nextDouble()));
        }
        assertThat(best).isGreaterThanOrEqualTo(least.clearIn() - 1e-7);
        assertThat(best).isCloseTo(least.clearIn(), within(0.3));
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35, 36, 37, 38})
    void firstContactIsTheFirstAngleWithAPointUnderGround(long seed) {
        Random random = new Random(seed);
        Sweeps sweeps = rough(seed, 0);
        LowEdge rough = edge(random);
        double atClosed = sweeps.leastAt(rough, 0).clearIn();
        LowEdge edge = new LowEdge(rough.fromIn(), rough.toIn(), rough.zAtPinIn() - atClosed + 0.5, rough.slope(), 0);
        double contact = sweeps.firstContact(List.of(edge), Math.PI);
        for (int i = 0; i < 4000; i++) {
            double q = contact * i / 4000;
            assertThat(sweeps.leastAt(edge, q).clearIn()).isGreaterThanOrEqualTo(-1e-7);
        }
        if (contact < Math.PI) {
            assertThat(sweeps.leastAt(edge, contact).clearIn()).isCloseTo(0, within(1e-6));
            assertThat(sweeps.leastAt(edge, contact + 1e-4).clearIn()).isNegative();
        }
    }

    private static LowEdge edge(Random random) {
        double slope = 0.3 * random.nextDouble() - 0.15;
        return new LowEdge(0.375, 40 + 30 * random.nextDouble(), 3 + random.nextDouble(), slope, 0);
    }

    private static Sweeps rough(long seed, double rise) {
        TriangleField field = new TriangleField(seed, 90, 7, 2.5, 0.06, -0.04);
        SwingAxes axes = new SwingAxes(PlanPoint.inches(1.3, -2.1), Direction.EAST, Direction.NORTH, Length.ZERO, 1);
        return new Sweeps(
                GroundCell.of(field.around(axes.pin(), Length.inches(40), Length.inches(80)), axes, Offset.ZERO), rise);
    }
}
