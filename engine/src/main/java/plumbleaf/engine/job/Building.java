package plumbleaf.engine.job;

import java.util.List;
import plumbleaf.engine.geometry.PlanPoint;

/** A building near the fence, by its corners in order round it. */
public record Building(String what, List<PlanPoint> corners) {
    public Building {
        corners = List.copyOf(corners);
    }
}
