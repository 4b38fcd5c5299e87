package plumbleaf.engine.job;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * A gate on a run.
 *
 * @param station of the post face nearer the run's start
 * @param opening clear distance between the post faces
 * @param asSet the opening as measured between the standing posts; empty until it was
 */
public record Gate(
        String id,
        GateKind kind,
        String run,
        Length station,
        Length opening,
        LeafSpec leaf,
        PostSpec hingePost,
        PostSpec latchPost,
        HingeSpec hinges,
        LatchSpec latch,
        GateLoads loads,
        List<AsSet> asSet,
        Release release,
        List<Obstacle> obstacles) {
    public Gate {
        asSet = List.copyOf(asSet);
        obstacles = List.copyOf(obstacles);
    }
}
