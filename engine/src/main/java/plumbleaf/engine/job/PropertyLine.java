package plumbleaf.engine.job;

import java.util.List;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.quantity.Length;

/**
 * A lot line that the fence keeps off.
 *
 * @param certifiedBy who vouches for it: the pins found, a survey, or the owner by word
 * @param setback least distance of the fence's face from it
 * @param points along it, in order
 */
public record PropertyLine(String what, Stated<String> certifiedBy, Length setback, List<PlanPoint> points) {
    public PropertyLine {
        points = List.copyOf(points);
    }
}
