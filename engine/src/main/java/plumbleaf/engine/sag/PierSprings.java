package plumbleaf.engine.sag;

import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.quantity.Length;

/**
 * What the hinge post stands in: the same footing in soft, likely and stiff soil, and six inches deeper in likely soil.
 */
public record PierSprings(PierSpring soft, PierSpring likely, PierSpring stiff, PierSpring sixDeeper) {
    /** What "six inches deeper" means. */
    public static final Length DEEPER = Length.inches(6);

    /** Of a footing in a band of soil whose loose top counts for nothing. */
    public static PierSprings of(SoilBand band, HoleSize hole, Length looseTop) {
        return new PierSprings(
                band.soft().spring(hole, looseTop),
                band.likely().spring(hole, looseTop),
                band.stiff().spring(hole, looseTop),
                band.likely().spring(hole.deeperBy(DEEPER), looseTop));
    }
}
