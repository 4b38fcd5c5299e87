package plumbleaf.engine.quantity;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Which of several is the greatest, where a difference in the last digits is none. Things that are alike by their nature (a leaf and its mirror, two
 * winds from opposite sides) come out a few last digits apart, and those digits are the machine's: they must not say which is named.
 */
public final class Ties {
    /**
     * A hundred-millionth: above what rounding leaves after a frame is solved and its forces are divided by a small lever (1.3 billionths were
     * seen between two machines), far below what any tape shows.
     */
    private static final double SAME = 1e-8;

    private Ties() {}

    /** Greater by more than a hundred-millionth of the larger. */
    public static boolean isMore(double one, double than) {
        return one - than > SAME * Math.max(Math.abs(one), Math.abs(than));
    }

    /** The greatest; of those that are as great the first. */
    public static <T> T most(List<T> all, ToDoubleFunction<? super T> of) {
        if (all.isEmpty()) throw new IllegalArgumentException("Of nothing there is no greatest");
        T most = all.get(0);
        double value = of.applyAsDouble(most);
        for (T each : all) {
            double here = of.applyAsDouble(each);
            if (!isMore(here, value)) continue;
            most = each;
            value = here;
        }
        return most;
    }

    /** A ratio as it is put in order: to the eighth decimal. */
    public static double inOrder(double ratio) {
        return Math.rint(ratio / SAME);
    }
}
