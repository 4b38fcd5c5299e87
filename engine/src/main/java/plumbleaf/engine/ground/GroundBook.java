package plumbleaf.engine.ground;

import java.util.List;
import plumbleaf.engine.quantity.Offset;

/**
 * What was measured of the ground, as it was written down.
 *
 * @param benchmark the mark that heights count from
 * @param setups where the level stood, in order
 * @param shots in the order they were taken
 * @param breaklines kerbs, steps and wall lines, which no triangle may cross
 * @param later where the ground will rise after the job
 */
public record GroundBook(
        Benchmark benchmark,
        List<Setup> setups,
        List<Shot> shots,
        List<Breakline> breaklines,
        List<LaterGround> later) {
    public GroundBook {
        setups = List.copyOf(setups);
        shots = List.copyOf(shots);
        breaklines = List.copyOf(breaklines);
        later = List.copyOf(later);
    }

    /** Nothing measured. */
    public static GroundBook empty() {
        return new GroundBook(new Benchmark("", Offset.ZERO), List.of(), List.of(), List.of(), List.of());
    }
}
