package plumbleaf.engine.footing;

import plumbleaf.engine.material.Concrete;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Volume;

/**
 * Concrete in one hole, no waste: the hole less the post. The hole's depth ends at the underside of the concrete; gravel is dug below it.
 * Check: PourCheck (MX36, MX37, E11).
 */
public record Pour(Volume volume) {
    /**
     * @param postOutline area of the post's outside, which stays free of concrete; zero for a post that stands on top
     */
    public static Pour of(HoleSize hole, Area postOutline) {
        double d = hole.diameter().inches();
        double net = Math.max(0, Math.PI * d * d / 4 - postOutline.squareInches());
        return new Pour(Volume.cubicInches(net * hole.depth().inches()));
    }

    public Force weight() {
        return Force.pounds(volume.cubicFeet() * Concrete.DENSITY.pcf());
    }
}
