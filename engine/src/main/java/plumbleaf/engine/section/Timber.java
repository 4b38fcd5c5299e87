package plumbleaf.engine.section;

import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * A rectangular piece of wood at its actual size. x bends in the depth, as a rail on edge does.
 *
 * @param depth the larger face of a rail that stands on edge
 * @param width across it
 */
public record Timber(Length depth, Length width, WoodSpecies species) {
    public Timber {
        if (depth.isZero() || width.isZero()) throw new IllegalArgumentException("Timber needs a depth and a width");
    }

    public double areaIn2() {
        return depth.inches() * width.inches();
    }

    /** b d3 / 12. */
    public double ixIn4() {
        return areaIn2() * depth.inches() * depth.inches() / 12;
    }

    /** b d2 / 6. */
    public double sxIn3() {
        return areaIn2() * depth.inches() / 6;
    }

    public double iyIn4() {
        return turned().ixIn4();
    }

    public double syIn3() {
        return turned().sxIn3();
    }

    /** The same piece laid on its other face. */
    public Timber turned() {
        return new Timber(/* depth= */ width, /* width= */ depth, species);
    }

    /** Weight of a length of it at a moisture. */
    public Force weightOf(Length length, Moisture moisture) {
        return Force.pounds(
                areaIn2() * length.inches() * species.densityAt(moisture).perCubicInch());
    }
}
