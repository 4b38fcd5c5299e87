package plumbleaf.engine.job;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * A strip along buildings in which nothing may burn.
 *
 * @param required whether the place asks for it, or it is good practice only
 */
public record NearHouse(Length strip, boolean required, List<Building> buildings) {
    public NearHouse {
        buildings = List.copyOf(buildings);
    }
}
