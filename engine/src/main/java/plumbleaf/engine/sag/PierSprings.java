package plumbleaf.engine.sag;

import java.util.Optional;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.quantity.Length;

/**
 * What the hinge post stands in: the same footing in soft, likely and stiff soil, and six inches deeper in likely soil; the last is empty where
 * nobody digs: on a slab, a wall, a post that stood before.
 */
public record PierSprings(BaseSpring soft, BaseSpring likely, BaseSpring stiff, Optional<BaseSpring> sixDeeper) {
    /** What "six inches deeper" means. */
    public static final Length DEEPER = Length.inches(6);

    /** Of a foot that no digging changes. */
    public static PierSprings undug(BaseSpring soft, BaseSpring likely, BaseSpring stiff) {
        return new PierSprings(soft, likely, stiff, Optional.empty());
    }

    /** Of a footing in a band of soil whose loose top counts for nothing. */
    public static PierSprings of(SoilBand band, HoleSize hole, Length looseTop) {
        return new PierSprings(
                band.soft().spring(hole, looseTop),
                band.likely().spring(hole, looseTop),
                band.stiff().spring(hole, looseTop),
                Optional.of(band.likely().spring(hole.deeperBy(DEEPER), looseTop)));
    }
}
