package plumbleaf.engine.footing;

import plumbleaf.engine.material.Concrete;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Volume;
import plumbleaf.engine.support.Bell;

/**
 * Concrete in one hole, no waste: the hole less the post. The hole's depth ends at the underside of the concrete; gravel is dug below it.
 * Check: PourCheck (MX36, MX37, E11).
 */
public record Pour(Volume volume) {
    /** Nothing is poured. */
    public static final Pour NONE = new Pour(Volume.ZERO);

    /**
     * @param postOutline area of the post's outside, which stays free of concrete; zero for a post that stands on top
     */
    public static Pour of(HoleSize hole, Area postOutline) {
        double d = hole.diameter().inches();
        double net = Math.max(0, Math.PI * d * d / 4 - postOutline.squareInches());
        return new Pour(Volume.cubicInches(net * hole.depth().inches()));
    }

    /**
     * With the foot widened: a cone's frustum in place of the shaft's end, {@code pi h (D2 + D d + d2) / 12}. Source: geometry. Check: BellCheck.
     */
    public static Pour of(HoleSize hole, Area postOutline, Bell bell) {
        return new Pour(
                Volume.cubicInches(of(hole, postOutline).volume().cubicFeet() * 1728 + bellExtraIn3(hole, bell)));
    }

    /** What a bell adds to a straight shaft. */
    public static double bellExtraIn3(HoleSize hole, Bell bell) {
        if (bell.isNone()) return 0;
        double d = hole.diameter().inches();
        double wide = Math.max(d, bell.diameter().inches());
        double high = Math.min(bell.height().inches(), hole.depth().inches());
        return Math.PI * high * (wide * wide + wide * d + d * d) / 12 - Math.PI * d * d / 4 * high;
    }

    public Force weight() {
        return Force.pounds(volume.cubicFeet() * Concrete.DENSITY.pcf());
    }
}
