package plumbleaf.engine.sag;

import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.quantity.Length;

/**
 * What the hinge post stands in: the same footing in soft, likely and stiff soil, and six inches deeper in likely soil. On a slab or a wall nothing is
 * deeper, and the last is the likely one again.
 */
public record PierSprings(BaseSpring soft, BaseSpring likely, BaseSpring stiff, BaseSpring sixDeeper) {
    /** What "six inches deeper" means. */
    public static final Length DEEPER = Length.inches(6);

    /** Of a foot that no digging changes. */
    public static PierSprings undug(BaseSpring soft, BaseSpring likely, BaseSpring stiff) {
        return new PierSprings(soft, likely, stiff, likely);
    }

    /** Of a footing in a band of soil whose loose top counts for nothing. */
    public static PierSprings of(SoilBand band, HoleSize hole, Length looseTop) {
        return new PierSprings(
                band.soft().spring(hole, looseTop),
                band.likely().spring(hole, looseTop),
                band.stiff().spring(hole, looseTop),
                band.likely().spring(hole.deeperBy(DEEPER), looseTop));
    }
}
