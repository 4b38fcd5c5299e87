package plumbleaf.engine.strength;

import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.PostStock;

/** What a post's own lean adds to what leans it: the weight it carries stands off its foot as soon as it moves. */
public final class SecondOrder {
    /** Above this, first-order numbers are off by more than a tenth. Source: AISC 360-22 C2.1, where 1.1 lets them do in braced frames (from memory). */
    public static final double TELLS = 1.1;

    /** Below this half angle a span is straight to seven digits, and its closed forms lose theirs. */
    private static final double TINY = 1e-3;

    private SecondOrder() {}

    /**
     * Moment at the foot of a cantilever with a weight on it, over that without: {@code [tan(aL) / aL] / [1 - P tan(aL) / (a k)]}, {@code a = sqrt(P / EI)}. Infinite
     * at the buckling load; good below it. Source: exact beam-column on a turning foot, any text on stability; a fixed foot is AISC 360-10 Commentary
     * Figure C-C2.3. Check: SecondOrderCheck (PD1 to PD4).
     *
     * @param weight P at the top
     * @param stiffnessLbIn2 E I
     * @param length L up to the weight
     * @param turningLbInPerRad k of the foot
     */
    public static double amplification(Force weight, double stiffnessLbIn2, Length length, double turningLbInPerRad) {
        double p = weight.pounds();
        if (p <= 0) return 1;
        double a = Math.sqrt(p / stiffnessLbIn2);
        double x = a * length.inches();
        if (x >= Math.PI / 2) return Double.POSITIVE_INFINITY;
        double tangent = StrictMath.tan(x);
        double left = 1 - p * tangent / (a * turningLbInPerRad);
        return left > 0 ? tangent / x / left : Double.POSITIVE_INFINITY;
    }

    /**
     * Largest moment of an evenly loaded simple span that is pressed at its ends, over that without: {@code 2 (sec u - 1) / u2}, {@code u = L/2 sqrt(P / EI)}.
     * Infinite at the buckling load. Source: AISC 360-10 Commentary Figure C-C2.2, case 1. Check: SecondOrderCheck (PD5 to PD8).
     *
     * @param pressed P
     * @param stiffnessLbIn2 E I
     * @param span L
     */
    public static double spanMoment(Force pressed, double stiffnessLbIn2, Length span) {
        double u = halfSpan(pressed, stiffnessLbIn2, span);
        if (u >= Math.PI / 2) return Double.POSITIVE_INFINITY;
        return u < TINY ? 1 : 2 * (1 / StrictMath.cos(u) - 1) / (u * u);
    }

    /**
     * Its largest deflection over that without: {@code 12 (2 sec u - 2 - u2) / (5 u4)}. Infinite at the buckling load. Source and check as {@link #spanMoment}.
     */
    public static double spanBow(Force pressed, double stiffnessLbIn2, Length span) {
        double u = halfSpan(pressed, stiffnessLbIn2, span);
        if (u >= Math.PI / 2) return Double.POSITIVE_INFINITY;
        return u < TINY ? 1 : 12 * (2 / StrictMath.cos(u) - 2 - u * u) / (5 * u * u * u * u);
    }

    private static double halfSpan(Force pressed, double stiffnessLbIn2, Length span) {
        return span.inches() / 2 * Math.sqrt(pressed.pounds() / stiffnessLbIn2);
    }

    /**
     * Of a hinge post with all of its leaf's weight at its top hinge, on the safe side.
     *
     * @param foot the softest that holds it
     */
    public static double ofPost(PostStock post, Force weight, Length toTopHinge, PierSpring foot) {
        double turned = foot.under(Force.ZERO, Moment.poundInches(1)).turn().radians();
        double inertia = Math.min(post.ixIn4(), post.iyIn4());
        return amplification(weight, post.elasticModulus().psi() * inertia, toTopHinge, 1 / turned);
    }

    public static Finding finding(String part, double amplification) {
        String lean = amplification < 1e6
                ? DecimalText.fixed(amplification, 3) + " times what leans it"
                : "without end: it does not stand";
        return Checked.of(
                "post.second-order",
                Severity.CAUTION,
                part,
                "Post " + part + ": its own lean under the leaf's weight makes the moment at its foot " + lean
                        + ", in soft ground; above 1.1 first-order numbers are short.",
                Basis.clause("exact beam-column on a turning foot; AISC 360-22 C2.1"),
                Measure.demand(Math.min(amplification, 1e6), TELLS, ""));
    }
}
