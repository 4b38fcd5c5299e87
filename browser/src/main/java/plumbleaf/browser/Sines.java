package plumbleaf.browser;

/**
 * Sine and cosine as Java's {@link StrictMath} works them out, step for step, so that they end in the same digit in a browser, whose own are others in one of thirty: a post's
 * moments, which are small differences of large forces, tell by the ninth digit.
 *
 * <p>The argument less the nearest multiple of a quarter turn, in two parts; then a polynomial of the thirteenth degree, or of the fourteenth, on an eighth of a turn either way.
 * Source: Java 17, class StrictMath, which names fdlibm 5.3 (K. C. Ng, Sun Microsystems, 1993) as the algorithm whose results it gives; its steps and coefficients, {@code k_sin},
 * {@code k_cos} and {@code e_rem_pio2}, written anew in this project's shape. Holds to half a million turns; farther the browser's own stand in. Check: SinesTest, bit for bit.
 *
 * <p>What is followed that closely keeps its notice: Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved. Developed at SunPro, a Sun Microsystems, Inc. business.
 * Permission to use, copy, modify, and distribute this software is freely granted, provided that this notice is preserved.
 */
public final class Sines {
    private static final double EIGHTH = 0x1.921fbp-1;
    private static final double FARTHEST = 0x1.921fbp19;
    private static final double TINY = 0x1p-27;

    private static final double QUARTERS = 0.6366197723675814;
    private static final double[] QUARTER = {1.5707963267341256, 6.077100506303966e-11, 2.0222662487111665e-21};
    private static final double[] QUARTER_TAIL = {6.077100506506192e-11, 2.0222662487959506e-21, 8.4784276603689e-32};
    /** So many leading bits may be lost to the subtraction before the next part of a quarter turn is taken away too. */
    private static final int[] LOST_BITS = {16, 49};

    private static final double S1 = -0.16666666666666632;
    private static final double S2 = 0.00833333333332249;
    private static final double S3 = -0.0001984126982985795;
    private static final double S4 = 2.7557313707070068e-6;
    private static final double S5 = -2.5050760253406863e-8;
    private static final double S6 = 1.58969099521155e-10;

    private static final double C1 = 0.0416666666666666;
    private static final double C2 = -0.001388888888887411;
    private static final double C3 = 2.480158728947673e-5;
    private static final double C4 = -2.7557314351390663e-7;
    private static final double C5 = 2.087572321298175e-9;
    private static final double C6 = -1.1359647557788195e-11;

    private Sines() {}

    public static double sin(double rad) {
        double size = Math.abs(rad);
        if (!(size < FARTHEST)) return Math.sin(rad);
        if (high(size) <= high(EIGHTH)) return sine(rad, 0, false);
        return Turned.of(rad).sine(0);
    }

    public static double cos(double rad) {
        double size = Math.abs(rad);
        if (!(size < FARTHEST)) return Math.cos(rad);
        if (high(size) <= high(EIGHTH)) return cosine(rad, 0);
        return Turned.of(rad).sine(1);
    }

    /** What is left of an angle once so many quarter turns are taken away; {@code tail} is what {@code rest} has no room for. */
    private record Turned(int quarters, double rest, double tail) {
        static Turned of(double rad) {
            double size = Math.abs(rad);
            int quarters = (int) (size * QUARTERS + 0.5);
            double left = size - quarters * QUARTER[0];
            double small = quarters * QUARTER_TAIL[0];
            double rest = left - small;
            for (int i = 0; i < LOST_BITS.length && exponent(size) - exponent(rest) > LOST_BITS[i]; i++) {
                double before = left;
                double part = quarters * QUARTER[i + 1];
                left = before - part;
                small = quarters * QUARTER_TAIL[i + 1] - ((before - left) - part);
                rest = left - small;
            }
            double tail = (left - rest) - small;
            return rad < 0 ? new Turned(-quarters, -rest, -tail) : new Turned(quarters, rest, tail);
        }

        /** The sine of the whole angle and so many quarter turns more. */
        double sine(int more) {
            int at = (quarters + more) & 3;
            double value = (at & 1) == 0 ? Sines.sine(rest, tail, true) : cosine(rest, tail);
            return at < 2 ? value : -value;
        }
    }

    private static double sine(double x, double tail, boolean hasTail) {
        if (Math.abs(x) < TINY) return x;
        double z = x * x;
        double v = z * x;
        double r = S2 + z * (S3 + z * (S4 + z * (S5 + z * S6)));
        return hasTail ? x - ((z * (0.5 * tail - v * r) - tail) - v * S1) : x + v * (S1 + z * r);
    }

    private static double cosine(double x, double tail) {
        double size = Math.abs(x);
        if (size < TINY) return 1;
        double z = x * x;
        double r = z * (C1 + z * (C2 + z * (C3 + z * (C4 + z * (C5 + z * C6)))));
        if (high(size) < 0x3FD33333) return 1 - (0.5 * z - (z * r - x * tail));
        double quarter = high(size) > 0x3fe90000 ? 0.28125 : Double.longBitsToDouble((high(size) - 0x00200000L) << 32);
        double half = 0.5 * z - quarter;
        return (1 - quarter) - (half - (z * r - x * tail));
    }

    /** The first half of a number's bits: its exponent and its leading digits. */
    private static int high(double size) {
        return (int) (Double.doubleToRawLongBits(size) >>> 32);
    }

    private static int exponent(double value) {
        return (high(value) >>> 20) & 0x7ff;
    }
}
