package plumbleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sine and cosine bit for bit as {@link StrictMath} has them: near nothing, round and round, at the quarter turns and where the ways of working change. */
class SinesTest {
    private static final int MANY = 400_000;

    @Test
    void everyBitIsStrictMaths() {
        Random random = new Random(7);
        for (int i = 0; i < MANY; i++) {
            same((random.nextDouble() - 0.5) * StrictMath.scalb(1.0, random.nextInt(40) - 22));
            same((random.nextInt(2001) - 1000) * (Math.PI / 4) + random.nextGaussian() * 1e-9);
        }
        for (int quarter = -4000; quarter <= 4000; quarter++) {
            double at = quarter * (Math.PI / 4);
            for (double each : new double[] {Math.nextDown(at), at, Math.nextUp(at)}) same(each);
        }
        for (int degrees = -720; degrees <= 720; degrees++) same(Math.toRadians(degrees / 2.0));
        for (double each : new double[] {0, -0.0, 0.3, 0.78125, 0x1p-27, 1e-300, 8e5, -8.2e5}) same(each);
    }

    private static void same(double rad) {
        assertThat(Double.doubleToLongBits(Sines.sin(rad)))
                .as("sine of " + rad)
                .isEqualTo(Double.doubleToLongBits(StrictMath.sin(rad)));
        assertThat(Double.doubleToLongBits(Sines.cos(rad)))
                .as("cosine of " + rad)
                .isEqualTo(Double.doubleToLongBits(StrictMath.cos(rad)));
    }
}
