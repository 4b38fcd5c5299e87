package plumbleaf.engine.section;

import java.util.function.Function;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * One section as it is bought. Properties are about its own axes: x for bending in the depth {@code depth}, y in the width.
 *
 * @param id {@code TUBE-2x2x0.083}, {@code F1083-REG-2.5}
 * @param family how it is stocked: {@code pipe}, {@code light}, {@code round}, {@code tube}
 * @param name as the trade says it: {@code 2 x 2 x 14 ga tube}
 * @param depth outside size in the plane of x bending; the diameter of a round one
 * @param nominalWall wall as sold, which gives the weight
 * @param usedWall wall that stiffness and bending count on
 * @param designWall wall that local formulas count on: 0.93 of nominal, 1.0 for A1085 only (AISC 360-22 B4.2)
 * @param weightPerFoot on the nominal wall
 * @param yieldStress Fy
 * @param ultimateStress Fu
 * @param yieldConfidence how well Fy and Fu are founded; {@code unverified} where the product guarantees none
 * @param source where sizes and properties come from
 * @param confidence how well they are founded: {@code looked-up}, {@code computed}, {@code memory}
 */
public record Section(
        String id,
        String family,
        String name,
        Shape shape,
        Length depth,
        Length width,
        Length nominalWall,
        Length usedWall,
        Length designWall,
        Force weightPerFoot,
        double areaIn2,
        double ixIn4,
        double sxIn3,
        double zxIn3,
        double iyIn4,
        double syIn3,
        double zyIn3,
        double jIn4,
        Stress yieldStress,
        Stress ultimateStress,
        String yieldConfidence,
        String source,
        String confidence)
        implements PostStock {
    public Section {
        if (!(areaIn2 > 0 && ixIn4 > 0 && iyIn4 > 0 && sxIn3 > 0 && syIn3 > 0 && jIn4 > 0))
            throw new IllegalArgumentException("Section " + id + " needs properties above zero");
        if (usedWall.isZero() || designWall.compareTo(nominalWall) > 0)
            throw new IllegalArgumentException(
                    "Section " + id + " needs a wall, and no design wall above the nominal one");
    }

    /** The same section turned by a quarter: what was its width is its depth. */
    public Section turned() {
        return new Section(
                id,
                family,
                name,
                shape,
                width,
                depth,
                nominalWall,
                usedWall,
                designWall,
                weightPerFoot,
                areaIn2,
                iyIn4,
                syIn3,
                zyIn3,
                ixIn4,
                sxIn3,
                zxIn3,
                jIn4,
                yieldStress,
                ultimateStress,
                yieldConfidence,
                source,
                confidence);
    }

    /** Radius of gyration about x. */
    public Length rx() {
        return Length.inches(Math.sqrt(ixIn4 / areaIn2));
    }

    /** Radius of gyration about y. */
    public Length ry() {
        return Length.inches(Math.sqrt(iyIn4 / areaIn2));
    }

    @Override
    public <T> T match(Function<Section, T> steel, Function<WoodPost, T> wood) {
        return steel.apply(this);
    }

    @Override
    public Stress elasticModulus() {
        return Steel.ELASTIC_MODULUS;
    }

    @Override
    public Stress shearModulus() {
        return Steel.SHEAR_MODULUS;
    }

    /** Steel does not creep in the open air. */
    @Override
    public double lastingBend() {
        return 1;
    }

    /** Weight of a piece of this section. */
    @Override
    public Force weightOf(Length length) {
        return weightPerFoot.times(length.inFeet());
    }

    /** Whether someone vouches for its yield. */
    public boolean yieldIsVouchedFor() {
        return !yieldConfidence.equals("unverified");
    }

    @Override
    public boolean isRound() {
        return shape == Shape.ROUND;
    }
}
