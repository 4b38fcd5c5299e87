package plumbleaf.engine.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CrossingTest {
    private static final double NEAR = 1e-10;

    /** Halvings from 100 down to that nearness, the tries spared, and one for rounding. */
    private static final int MOST_TRIES = 40 + 2 + 1;

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    /** A rising line with a bend and, in every other case, a jump: where it passes zero is known by hand. */
    @ParameterizedTest
    @MethodSource("seeds")
    void aRisingCurveIsHeldWhereItPassesZero(int seed) {
        Random random = new Random(seed);
        double at = 1 + 98 * random.nextDouble();
        double flat = 0.01 + random.nextDouble();
        double steep = 1 + 50 * random.nextDouble();
        double jump = seed % 2 == 0 ? 0 : 40 * random.nextDouble();
        AtomicInteger tries = new AtomicInteger();
        DoubleUnaryOperator curve = x -> {
            tries.incrementAndGet();
            return x <= at ? flat * (x - at) : steep * (x - at) + jump;
        };
        Crossing found = Crossing.of(curve, 0, curve.applyAsDouble(0), 100, curve.applyAsDouble(100), NEAR);
        assertThat(found.below()).isLessThanOrEqualTo(at).isCloseTo(at, within(NEAR));
        assertThat(found.above()).isGreaterThan(at).isCloseTo(at, within(NEAR));
        assertThat(tries.get() - 2).isLessThanOrEqualTo(MOST_TRIES);
    }
}
