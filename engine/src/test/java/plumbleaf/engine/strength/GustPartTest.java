package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The times a wind may grow, found by chords, are those that plain halving finds, to the last digit, in few looks. */
class GustPartTest {
    /** A use by its sizes at no wind and at the wind asked about, straight or bent. */
    private static DoubleUnaryOperator use(double still, double windy, double across) {
        return times -> {
            double along = still + (windy - still) * times;
            return Math.sqrt(along * along + across * across * times * times);
        };
    }

    private static double times(DoubleUnaryOperator use) {
        return GustPart.solved("part", use, use).timesToUltimate();
    }

    private static double halved(DoubleUnaryOperator use) {
        double low = 0;
        double high = 1;
        while (use.applyAsDouble(high) <= 1) {
            low = high;
            high *= 2;
        }
        for (int halving = 0; halving < 50; halving++) {
            double middle = (low + high) / 2;
            if (use.applyAsDouble(middle) <= 1) low = middle;
            else high = middle;
        }
        return low;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.3, 0.75, 1.01, 1.9, 7, 60})
    void isWhatHalvingFinds(double windy) {
        for (double still : new double[] {0, 0.1, 0.45, 0.99})
            for (double across : new double[] {0, 0.05, 0.6, 3}) {
                DoubleUnaryOperator use = use(still, windy, across);
                if (use.applyAsDouble(4096) <= 1 || windy <= still) continue;
                assertThat(times(use)).as(still + " " + across).isEqualTo(halved(use));
            }
    }

    @Test
    void aStraightUseReachesOneWhereItMust() {
        assertThat(times(use(0.2, 0.6, 0))).isCloseTo(2, within(1e-12));
    }

    @Test
    void noneIsLeftWhereTheDeadLoadIsTooMuch() {
        assertThat(times(times -> 1.2 + times)).isZero();
    }

    @Test
    void aSuddenUseIsFoundByHalving() {
        assertThat(times(times -> times < 0.7 ? 0 : 1e9)).isCloseTo(0.7, within(1e-12));
    }

    @Test
    void looksFewTimes() {
        int[] looks = {0};
        DoubleUnaryOperator use = use(0.3, 0.8, 0.4);
        times(times -> {
            looks[0]++;
            return use.applyAsDouble(times);
        });
        assertThat(looks[0]).as("for two limits").isLessThan(2 * 35);
    }
}
