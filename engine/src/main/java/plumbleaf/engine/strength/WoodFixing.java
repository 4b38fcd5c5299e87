package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.WoodPost;

/**
 * One bolt or lag screw that holds a steel plate on a wood post out of doors: pushed sideways it is a dowel in single shear, the wood its main member, the plate
 * its side; the push may stand at any angle to the grain, which runs up the post.
 *
 * @param diameter nominal
 * @param inEquations the dowel's diameter where the wood bends it: full of a bolt, root of a lag
 * @param inWood length that bears in the wood
 * @param plate thickness of the steel plate
 * @param apart from one to the next up the post; zero for a lone one
 * @param toEnd up to the post's top
 */
public record WoodFixing(
        WoodPost post, Length diameter, Length inEquations, Length inWood, Length plate, Length apart, Length toEnd) {
    /** Wood that is wet in service, its fixings fitted wet or dry. Source: NDS 2018 Table 11.3.3. */
    public static final double WET = 0.7;

    /** CM of compression across the grain. Source: NDS Supplement 2018 Tables 4A and 4D. */
    static final double WET_ACROSS = 0.67;

    /** Bending yield of bolts and of lags from 3/8 in. Source: NDS 2018 Table I1. */
    private static final Stress YIELD = Stress.psi(45_000);

    /** Bending yield of a lag of 5/16 in., and of a thinner one. Source: NDS 2018 Table I1. */
    private static final Stress YIELD_THIN = Stress.psi(60_000);

    private static final double THIN_IN = 0.35;

    /**
     * A hot-rolled plate of ASTM A36, {@code Fe = 2.4 Fu / 1.6 = 1.5 Fu}; it stops being true for a cold-formed one, 1.375 Fu. Source: NDS Appendix I, as a course page of
     * Missouri S&T on steel side plates gives it.
     */
    private static final Stress PLATE_BEARING = Stress.psi(87_000);

    /** Diameters to the next one and to the end for all of its strength. Source: NDS 2018 Tables 12.5.1A and B, from memory. */
    private static final double FULL = 4;

    private static final double LEAST_APART = 3;
    private static final double LEAST_TO_END = 2;

    /** Diameters to an edge that it is pushed towards. Source: NDS 2018 Table 12.5.1C, from memory. */
    private static final double LOADED_EDGE = 4;

    /** Longer than this a bearing length up the grain gains nothing. Source: NDS 2018 3.10.4. */
    private static final double SPREAD_TO_IN = 6;

    private static final double SPREAD_IN = 0.375;

    /**
     * {@code Z' = Z CD CM Cd}: the least yield mode, duration, wet service, and what is lost where fixings or the end stand nearer than they ought to. Group action
     * is left out: two or three bolts under a stiff plate lose a hundredth or two. Source: NDS 2018 11.3, 12.3, 12.5.1. Check: WoodFixingTest, YieldModesCheck.
     *
     * @param toGrainDeg between the push and the grain, 0 to 90
     * @param duration CD
     */
    public Force sideways(double toGrainDeg, double duration) {
        return modes(toGrainDeg).governing().value().times(duration * WET * geometry());
    }

    /** The yield mode that governs. */
    public String mode(double toGrainDeg) {
        return modes(toGrainDeg).governing().name();
    }

    YieldModes modes(double toGrainDeg) {
        double g = post.species().ovenDryGravity();
        Stress bearing = DowelBearing.hankinson(DowelBearing.along(g), DowelBearing.across(g, diameter), toGrainDeg);
        Stress yield = diameter.inches() < THIN_IN ? YIELD_THIN : YIELD;
        return new YieldModes(inEquations, diameter, yield, inWood, bearing, plate, PLATE_BEARING, toGrainDeg);
    }

    /** The lesser of what the next one and the end leave. */
    public double geometry() {
        double d = diameter.inches();
        double next = apart.isZero() ? 1 : Math.min(1, apart.inches() / (FULL * d));
        return Math.min(next, Math.min(1, toEnd.inches() / (FULL * d)));
    }

    /** Whether it stands so near the next one or the end that no strength counts. */
    public boolean isTooNear() {
        double d = diameter.inches();
        boolean next = !apart.isZero() && apart.inches() < LEAST_APART * d - 1e-9;
        return next || toEnd.inches() < LEAST_TO_END * d - 1e-9;
    }

    /** From its middle to the post's side, with a hole in the middle of the face. */
    public Length edge() {
        return post.width().times(0.5);
    }

    /** What the edge ought to be where it is pushed across the grain. */
    public Length edgeNeeded() {
        return diameter.times(LOADED_EDGE);
    }

    /**
     * What a washer may press into the far side of the post: {@code Fc CM Cb A}, Cb {@code (over + 3/8) / over} below 6 in. Duration does not count. More sinks it
     * in and the hinge comes loose; the bolt is then pulled through. Source: NDS 2018 3.10.2, 3.10.4, Supplement Table 4A. Check: WoodFixingTest.
     *
     * @param over outside of the washer
     * @param hole under it
     */
    public Force washer(Length over, Length hole) {
        double area = Math.PI / 4 * (over.inches() * over.inches() - hole.inches() * hole.inches());
        return Force.pounds(post.grade().acrossGrain().psi() * WET_ACROSS * spread(over) * area);
    }

    /** Cb of a washer. Source: NDS 2018 3.10.4. */
    static double spread(Length over) {
        return over.inches() < SPREAD_TO_IN ? (over.inches() + SPREAD_IN) / over.inches() : 1;
    }
}
