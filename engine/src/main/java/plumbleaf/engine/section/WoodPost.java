package plumbleaf.engine.section;

import java.util.function.Function;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * A wood post at its dressed size: sawn, or a round pole.
 *
 * @param id {@code PINE-4x4}
 * @param isRound whether it is a pole; then depth and width are its diameter at the small end, its taper left out on the safe side
 * @param depth along the run
 * @param width across it
 * @param species for its weight, and for fasteners in it
 * @param grade reference design values of this size: dimension lumber to 4 in. thick, posts and timbers from 5 in. up, poles by their own table
 * @param timber whether it is 5 in. or more each way, so that the wet-service and size factors of timbers hold; a pole is neither
 * @param incised whether it was incised for treatment
 */
public record WoodPost(
        String id,
        String name,
        boolean isRound,
        Length depth,
        Length width,
        WoodSpecies species,
        WoodGrade grade,
        boolean timber,
        boolean incised,
        String source,
        String confidence)
        implements PostStock {
    /** CM of E and Emin of dimension lumber that is wet; timbers and poles hold wet or dry. Source: NDS Supplement 2018 Table 4A; NDS 2018 6.3.3. */
    private static final double WET_MODULUS = 0.9;

    /** Ci of E and Emin. Source: NDS 2018 Table 4.3.8, from memory. */
    private static final double INCISED_MODULUS = 0.95;

    /** E over G of sawn wood. Source: ASTM D198 convention, one sixteenth; Wood Handbook FPL-GTR-190 Table 5-1 lies round it. From memory. */
    private static final double OVER_SHEAR = 16;

    /** Kcr of wood that is wet or dries under its load. Source: NDS 2018 3.5.2. */
    private static final double CREEP = 2.0;

    public WoodPost {
        if (depth.isZero() || width.isZero()) throw new IllegalArgumentException("Post " + id + " needs a size");
        if (isRound && !depth.equals(width)) throw new IllegalArgumentException("Post " + id + " is round: one size");
    }

    @Override
    public <T> T match(Function<Section, T> steel, Function<WoodPost, T> wood) {
        return wood.apply(this);
    }

    /** {@code pi d2 / 4}, or {@code b d}. */
    @Override
    public double areaIn2() {
        double full = depth.inches() * width.inches();
        return isRound ? Math.PI / 4 * full : full;
    }

    /** {@code pi d4 / 64}, or {@code b d3 / 12}. */
    @Override
    public double ixIn4() {
        return areaIn2() * depth.inches() * depth.inches() / (isRound ? 16 : 12);
    }

    @Override
    public double iyIn4() {
        return areaIn2() * width.inches() * width.inches() / (isRound ? 16 : 12);
    }

    @Override
    public double sxIn3() {
        return 2 * ixIn4() / depth.inches();
    }

    @Override
    public double syIn3() {
        return 2 * iyIn4() / width.inches();
    }

    /**
     * {@code pi d4 / 32}, or {@code a b3 (1/3 - 0.21 b/a (1 - b4 / (12 a4)))}, a the larger side.
     * Source: Roark's Formulas for Stress and Strain, torsion of a rectangle, from memory. Check: WoodPostStrengthTest.
     */
    @Override
    public double jIn4() {
        if (isRound) return 2 * ixIn4();
        double a = Math.max(depth.inches(), width.inches());
        double b = Math.min(depth.inches(), width.inches());
        double thin = b / a;
        return a * b * b * b * (1 / 3.0 - 0.21 * thin * (1 - thin * thin * thin * thin / 12));
    }

    @Override
    public Stress elasticModulus() {
        return grade.modulus().times(modulusFactor());
    }

    /** CM and Ci of both moduli. */
    public double modulusFactor() {
        boolean dimension = !timber && !isRound;
        return (dimension ? WET_MODULUS : 1) * (incised ? INCISED_MODULUS : 1);
    }

    @Override
    public Stress shearModulus() {
        return elasticModulus().times(1 / OVER_SHEAR);
    }

    @Override
    public double lastingBend() {
        return CREEP;
    }

    @Override
    public Force weightOf(Length length) {
        return Force.pounds(
                areaIn2() * length.inches() * species.densityAt(Moisture.WET).perCubicInch());
    }

    /** The same with its outside gone all round, as rot at grade leaves it. */
    public WoodPost lessRound(Length gone) {
        return new WoodPost(
                id,
                name,
                isRound,
                depth.minus(gone.times(2)),
                width.minus(gone.times(2)),
                species,
                grade,
                timber,
                incised,
                source,
                confidence);
    }
}
