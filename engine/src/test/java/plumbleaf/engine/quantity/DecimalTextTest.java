package plumbleaf.engine.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Numbers as text are rounded as exact arithmetic rounds them, whether or not it was needed to tell. */
class DecimalTextTest {
    @Test
    void halvesGoAwayFromZeroAndNothingHasAMinus() {
        assertThat(DecimalText.fixed(-0.125, 2)).isEqualTo("-0.13");
        assertThat(DecimalText.fixed(-0.001, 2)).isEqualTo("0.00");
        assertThat(DecimalText.fixed(0.05, 2)).isEqualTo("0.05");
        assertThat(DecimalText.fixed(1.005, 2)).isEqualTo("1.00");
        assertThat(DecimalText.upTo(2.50, 2)).isEqualTo("2.5");
        assertThat(DecimalText.upTo(-0.0004, 3)).isEqualTo("0");
        assertThat(DecimalText.upTo(1200, 2)).isEqualTo("1200");
        assertThat(DecimalText.fixed(2.5, 0)).isEqualTo("3");
    }

    @Test
    void everyNumberIsRoundedAsItsExactValueIs() {
        Random random = new Random(20261129);
        for (int i = 0; i < 200_000; i++) {
            int places = random.nextInt(8);
            double value = number(random, places);
            BigDecimal exact = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
            String fixed =
                    exact.signum() == 0 ? BigDecimal.ZERO.setScale(places).toPlainString() : exact.toPlainString();
            String upTo = exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
            assertThat(List.of(DecimalText.fixed(value, places), DecimalText.upTo(value, places)))
                    .as("%s to %s places", value, places)
                    .containsExactly(fixed, upTo);
        }
    }

    /** Any size, and every third time as near a half of the last place as doubles come. */
    private static double number(Random random, int places) {
        double any = (random.nextDouble() - 0.5) * StrictMath.pow(10, random.nextInt(14) - 3);
        if (random.nextInt(3) > 0) return any;
        double half = (StrictMath.rint(any) + 0.5) / StrictMath.pow(10, places);
        return switch (random.nextInt(3)) {
            case 0 -> half;
            case 1 -> Math.nextUp(half);
            default -> Math.nextDown(half);
        };
    }
}
