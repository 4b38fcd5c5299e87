package plumbleaf.engine.ground;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * Height of the surface at a place.
 *
 * @param beyond how far the place lies outside the shots; zero inside their hull
 */
public record SurfaceHeight(Offset elevation, Length beyond) {
    /** Whether it was carried on beyond the shots. */
    public boolean isExtrapolated() {
        return !beyond.isZero();
    }
}
