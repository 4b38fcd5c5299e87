package plumbleaf.engine.support;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * Anchors set afterwards in concrete, masonry or blocking, as their maker's sheet gives them.
 *
 * @param embedment hef, effective depth in what holds them; of a lag screw its threads in the wood
 * @param tension what the maker allows one to be pulled with at this depth, allowable-stress level; zero where no sheet was entered: unknown never passes
 * @param shear what the maker allows one sideways, likewise
 */
public record Anchors(Length diameter, Length embedment, Force tension, Force shear) {
    /** A 1/2 in. anchor, 2-3/4 in. deep, without its maker's sheet. */
    public static final Anchors USUAL = new Anchors(Length.inches(0.5), Length.inches(2.75), Force.ZERO, Force.ZERO);

    public Anchors {
        if (diameter.isZero() || embedment.isZero())
            throw new IllegalArgumentException("Anchors need a diameter and an embedment");
    }

    /** Whether the maker's sheet was entered. */
    public boolean isVouchedFor() {
        return !tension.isZero() && !shear.isZero();
    }
}
