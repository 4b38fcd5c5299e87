package plumbleaf.engine.strength;

import java.util.List;
import plumbleaf.engine.catalogue.BoltSize;
import plumbleaf.engine.quantity.Length;

/**
 * A bolt through its plies: how long it must be, and what it is ordered as.
 *
 * @param grip all plies together
 * @param least grip, two washers, nut and two threads
 * @param order the next length in stock
 * @param stickOut of the bolt past the nut
 * @param threadInGrip thread that lies within the plies
 */
public record BoltStack(BoltSize size, Length grip, Length least, Length order, Length stickOut, Length threadInGrip) {
    /** Bolts come in half inches to 6 in., then in whole ones. Common practice, no source. */
    private static final double STEP_IN = 0.5;

    private static final double LONG_STEP_IN = 1;
    private static final double SHORT_TO_IN = 6;
    private static final double SHORTEST_IN = 1;

    /** More than this past the nut catches clothes: a cap nut or a cut. Judgement. */
    private static final Length CAP_OVER = Length.inches(0.375);

    /**
     * {@code L >= plies + 2 washers + nut + 2 threads}, to the next stock length; thread {@code 2 D + 1/4}, beyond 6 in. {@code 2 D + 1/2}.
     * Source: common practice; thread length ASME B18.2.1 (from memory). Check: BoltStackTest.
     */
    public static BoltStack of(BoltSize size, List<Length> plies) {
        double grip = 0;
        for (Length ply : plies) grip += ply.inches();
        double least = grip + 2 * size.washer().inches() + size.nut().inches() + 2.0 / size.threadsPerInch();
        double step = least > SHORT_TO_IN ? LONG_STEP_IN : STEP_IN;
        double order = Math.max(SHORTEST_IN, Math.ceil(least / step - 1e-9) * step);
        double thread = 2 * size.diameter().inches() + (order > SHORT_TO_IN ? 0.5 : 0.25);
        double shank = Math.max(0, order - thread);
        double plain = Math.max(0, shank - size.washer().inches());
        return new BoltStack(
                size,
                Length.inches(grip),
                Length.inches(least),
                Length.inches(order),
                Length.inches(
                        order - grip - 2 * size.washer().inches() - size.nut().inches()),
                Length.inches(Math.max(0, grip - plain)));
    }

    /** Whether the thread stays out of a shear plane this far below the head's washer. */
    public boolean threadClearOf(Length depth) {
        return grip.inches() - threadInGrip.inches() >= depth.inches() - 1e-9;
    }

    /** Whether the end past the nut is to be capped or cut. */
    public boolean needsCap() {
        return stickOut.compareTo(CAP_OVER) > 0;
    }

    /** A sleeve that keeps a tube from being crushed: as long as the tube is wide, less 1/32 in. Common practice, no source. */
    public static Length sleeve(Length tubeWidth) {
        return Length.inches(tubeWidth.inches() - 1 / 32.0);
    }
}
