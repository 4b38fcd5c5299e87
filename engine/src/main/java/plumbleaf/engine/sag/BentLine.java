package plumbleaf.engine.sag;

import java.util.List;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.quantity.Offset;

/**
 * The centreline of a part and how its points move under the leaf's own weight, for drawing.
 *
 * @param part a member's id, or {@code post}
 */
public record BentLine(String part, List<Point> points) {
    public BentLine {
        points = List.copyOf(points);
    }

    /** Where a point is, and how far it moves away from the hinges and down. */
    public record Point(Place at, Offset away, Offset down) {}
}
