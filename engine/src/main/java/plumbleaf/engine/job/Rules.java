package plumbleaf.engine.job;

import java.util.List;

/** The limits this job must keep. */
public record Rules(List<HeightRule> heights, GapRule gap) {
    public Rules {
        heights = List.copyOf(heights);
    }
}
