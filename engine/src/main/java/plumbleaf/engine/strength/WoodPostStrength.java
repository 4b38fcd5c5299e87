package plumbleaf.engine.strength;

import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Timber;
import plumbleaf.engine.section.WoodPost;

/**
 * A sawn post set in the ground, wet: reference values with the factors of wet service, size and incising, duration by the combination.
 * Source: NDS 2018 4.3, 3.7, 3.9.2; Supplement Tables 4A and 4D. Check: WoodPostStrengthTest.
 *
 * @param bending Fb with every factor but duration and stability
 * @param shear Fv likewise
 * @param compression Fc likewise
 * @param modulus E
 * @param leastModulus Emin
 */
public record WoodPostStrength(
        Timber outline, Stress bending, Stress shear, Stress compression, Stress modulus, Stress leastModulus)
        implements PostStrength {
    /** CD. Source: NDS 2018 Table 2.3.2. */
    private static final double LASTING = 0.9;

    private static final double LIVE = 1.0;
    private static final double WIND = 1.6;

    /** KF of bending over the wind's CD, lambda 1. Source: NDS 2018 Appendix N, Tables N1 and N3, from memory. */
    private static final double RESERVE = 2.54 / WIND;

    /** Ke of a post fixed at grade and free on top. Source: NDS 2018 Appendix G. */
    private static final double CANTILEVER = 2.1;

    /** Incising, Ci. Source: NDS 2018 Table 4.3.8, from memory. */
    private static final double INCISED_STRENGTH = 0.80;

    private static final double INCISED_MODULUS = 0.95;

    /** CM of timbers' Fc; their other values hold wet or dry. Source: NDS Supplement 2018 Table 4D, from memory. */
    private static final double WET_TIMBER_COMPRESSION = 0.91;

    /** CM of dimension lumber. Source: NDS Supplement 2018 Table 4A. */
    private static final double WET_BENDING = 0.85;

    private static final double WET_BENDING_FROM_PSI = 1150;
    private static final double WET_SHEAR = 0.97;
    private static final double WET_COMPRESSION = 0.8;
    private static final double WET_COMPRESSION_FROM_PSI = 750;
    private static final double WET_MODULUS = 0.9;

    static WoodPostStrength of(WoodPost post) {
        double incised = post.incised() ? INCISED_STRENGTH : 1;
        double incisedE = post.incised() ? INCISED_MODULUS : 1;
        double fb = post.grade().bending().psi();
        double fc = post.grade().compression().psi();
        double fv = post.grade().shear().psi();
        double e = post.grade().modulus().psi();
        double least = post.grade().leastModulus().psi();
        if (post.timber())
            return made(post, fb * incised, fv * incised, fc * incised * WET_TIMBER_COMPRESSION, e, least, incisedE);
        double larger = Math.max(post.depth().inches(), post.width().inches());
        double sized = post.grade().sizeSpecific() ? fb : fb * RailCheck.sizeFactor(larger);
        double wetBending = sized > WET_BENDING_FROM_PSI ? WET_BENDING : 1;
        double sizedFc = post.grade().sizeSpecific() ? fc : fc * compressionSizeFactor(larger);
        double wetFc = sizedFc > WET_COMPRESSION_FROM_PSI ? WET_COMPRESSION : 1;
        return made(
                post,
                sized * wetBending * incised,
                fv * WET_SHEAR * incised,
                sizedFc * wetFc * incised,
                e * WET_MODULUS,
                least * WET_MODULUS,
                incisedE);
    }

    private static WoodPostStrength made(
            WoodPost post, double fb, double fv, double fc, double e, double least, double incisedE) {
        return new WoodPostStrength(
                post.outline(),
                Stress.psi(fb),
                Stress.psi(fv),
                Stress.psi(fc),
                Stress.psi(e * incisedE),
                Stress.psi(least * incisedE));
    }

    /** CF of Fc. Source: NDS Supplement 2018 Table 4A, from memory. */
    private static double compressionSizeFactor(double depthIn) {
        if (depthIn <= 3.5) return 1.15;
        return depthIn <= 5.5 ? 1.1 : 1.05;
    }

    private static double duration(Combination combination) {
        if (combination.hasWind()) return WIND;
        return combination.live() > 0 ? LIVE : LASTING;
    }

    /**
     * {@code (fc/Fc')2 + fb1/(Fb1' (1 - fc/FcE1)) + fb2/(Fb2' (1 - fc/FcE2 - (fb1/FbE)2))}, FbE left out since a square post does not buckle sideways; shear
     * {@code 1.5 V / A} alone is never less. Source: NDS 2018 Equation 3.9-3, 3.4-2. Check: WoodPostStrengthTest.
     */
    @Override
    public double ratio(CombinedAction combined, Length height) {
        BaseAction action = combined.action();
        double duration = duration(combined.combination());
        double fc = Math.max(0, action.down().pounds()) / outline.areaIn2();
        double alongPsi = Math.abs(action.momentAlong().poundInches()) / outline.sxIn3();
        double acrossPsi = Math.abs(action.momentAcross().poundInches()) / outline.syIn3();
        double may = bending.psi() * duration;
        double axial = fc / (compression.psi() * duration * stability(duration, height));
        double along = alongPsi / (may * grown(fc, height, outline.depth()));
        double across = acrossPsi / (may * grown(fc, height, outline.width()));
        double shearRatio = 1.5 * action.push().pounds() / outline.areaIn2() / (shear.psi() * duration);
        return Math.max(axial * axial + along + across, shearRatio);
    }

    /** {@code 1 - fc/FcE}: what is left of bending strength while the weight leans on it. */
    private double grown(double fcPsi, Length height, Length depth) {
        return Math.max(1e-6, 1 - fcPsi / eulerPsi(height, depth));
    }

    /** {@code FcE = 0.822 Emin' / (le/d)2}. Source: NDS 2018 3.7.1.5. */
    private double eulerPsi(Length height, Length depth) {
        double slender = CANTILEVER * height.inches() / depth.inches();
        return slender <= 0 ? Double.MAX_VALUE : 0.822 * leastModulus.psi() / (slender * slender);
    }

    /** {@code CP = (1 + a)/(2c) - sqrt(((1 + a)/(2c))2 - a/c), a = FcE/Fc*, c = 0.8}. Source: NDS 2018 Equation 3.7-1. */
    private double stability(double duration, Length height) {
        Length least = outline.depth().compareTo(outline.width()) < 0 ? outline.depth() : outline.width();
        double a = eulerPsi(height, least) / (compression.psi() * duration);
        if (a > 1e6) return 1;
        double half = (1 + a) / 1.6;
        return half - Math.sqrt(half * half - a / 0.8);
    }

    @Override
    public Moment allowableInWind() {
        return Moment.poundInches(bending.psi() * WIND * Math.min(outline.sxIn3(), outline.syIn3()));
    }

    @Override
    public Moment ultimateInWind() {
        return allowableInWind().times(RESERVE);
    }

    @Override
    public double roomBeside(Force down, Length height) {
        double fc = down.pounds() / outline.areaIn2();
        double axial = fc / (compression.psi() * WIND * stability(WIND, height));
        return Math.max(0, (1 - axial * axial) * grown(fc, height, outline.width()));
    }

    @Override
    public double stiffnessLbIn2() {
        return modulus.psi() * Math.min(outline.ixIn4(), outline.iyIn4());
    }

    @Override
    public Basis clause() {
        return Basis.clause("NDS 2018 3.9.2, wet service, wind duration 1.6");
    }
}
