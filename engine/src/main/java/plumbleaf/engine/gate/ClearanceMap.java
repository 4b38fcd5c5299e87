package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Clearances over a grid of the swing, for shading.
 *
 * @param angles columns
 * @param radii rows
 * @param clear by angle, then by radius
 */
public record ClearanceMap(List<Angle> angles, List<Length> radii, List<List<Offset>> clear) {
    public ClearanceMap {
        angles = List.copyOf(angles);
        radii = List.copyOf(radii);
        clear = clear.stream().map(List::copyOf).toList();
    }
}
