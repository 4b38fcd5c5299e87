package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;

/**
 * More rails for boards that hang far below the rails of their run, as under a level top over falling ground: at the spacing of the rails above, down to as near the
 * ground as the lowest rail lies elsewhere, at the end of the bay where the ground is highest.
 */
public final class LowRails {
    /** Nearer to the lowest rail another holds nothing that it does not hold. Judgement. */
    private static final double LEAST_IN = 12;

    private LowRails() {}

    /**
     * Heights of the rails to add, from the lowest up, over what the other heights count from.
     *
     * @param lowestIn of the lowest rail there is
     * @param nearestIn where a rail may lie at the lowest
     * @param spaceIn between the rails there are, or the most there may be
     */
    public static List<Double> under(double lowestIn, double nearestIn, double spaceIn) {
        double dropIn = lowestIn - nearestIn;
        if (dropIn < LEAST_IN || spaceIn <= 0) return List.of();
        int more = (int) Math.ceil(dropIn / spaceIn - 1e-9);
        List<Double> heights = new ArrayList<>();
        for (int under = more; under > 0; under--) heights.add(lowestIn - dropIn * under / more);
        return heights;
    }
}
