package plumbleaf.engine.strength;

import java.util.List;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.Timber;

/**
 * A wood rail between two posts, a simple span: weight bends it down, wind bends it across.
 * Source: NDS 2018 3.9.2 (bending both ways, no axial load), 4.3 and Supplement Table 4A factors. Check: PostCheckTest.
 *
 * @param rail as it stands: its depth upright
 * @param span between its supports
 * @param downLbPerIn weight on it, all wet
 * @param windLbPerIn strength-level wind on it
 */
public record RailCheck(Timber rail, Length span, double downLbPerIn, double windLbPerIn) {
    /** CD of a load that stays. Source: NDS 2018 Table 2.3.2. */
    static final double LASTING = 0.9;
    /** CD of wind. Source: NDS 2018 Table 2.3.2. */
    static final double WIND = 1.6;
    /** Part of strength-level wind in allowable-stress design. Source: ASCE 7-16 2.4.1. */
    private static final double ASD = Combination.D_W.wind();
    /** CM of Fb outdoors, where Fb CF is above 1150 psi. Source: NDS Supplement 2018 Table 4A. */
    private static final double WET_BENDING = 0.85;

    private static final double WET_BENDING_FROM_PSI = 1150;
    /** CM of E. Source: NDS Supplement 2018 Table 4A. */
    private static final double WET_MODULUS = 0.9;
    /** Kcr of unseasoned or wet wood. Source: NDS 2018 3.5.2. Check: RailCreepCheck (CX33). */
    public static final double CREEP_WET = 2.0;
    /** Kcr of seasoned wood in the dry. Source: NDS 2018 3.5.2. */
    public static final double CREEP_SEASONED = 1.5;
    /** What a rail may sag in a bay before one sees it. Judgement. */
    private static final Length SEEN = Length.inches(0.25);

    /**
     * Size factor of Fb. Source: NDS Supplement 2018 Table 4A (2 in. thick; 4 in. thick is taken the same, on the safe side). Southern pine has it inside.
     *
     * @param depthIn larger face
     */
    static double sizeFactor(double depthIn) {
        if (depthIn <= 3.5) return 1.5;
        if (depthIn <= 4.5) return 1.4;
        if (depthIn <= 5.5) return 1.3;
        if (depthIn <= 7.25) return 1.2;
        if (depthIn <= 9.25) return 1.1;
        return 1.0;
    }

    /** Flat use of Fb, 2 and 3 in. thick. Source: NDS Supplement 2018 Table 4A. */
    static double flatFactor(double depthIn) {
        if (depthIn < 3.5) return 1.0;
        if (depthIn <= 3.5) return 1.1;
        return depthIn <= 9.25 ? 1.15 : 1.2;
    }

    /** Fb with size, wet service and duration; {@code edgewise} when the larger face stands in the plane of bending. */
    private double allowedBendingPsi(boolean edgewise, double duration) {
        double larger = Math.max(rail.depth().inches(), rail.width().inches());
        double fb = rail.species().grade().bending().psi();
        double sized = rail.species().grade().sizeSpecific() ? fb : fb * sizeFactor(larger);
        double wet = sized > WET_BENDING_FROM_PSI ? WET_BENDING : 1;
        return sized * wet * duration * (edgewise ? 1 : flatFactor(larger));
    }

    private double momentLbIn(double loadLbPerIn) {
        return loadLbPerIn * span.inches() * span.inches() / 8;
    }

    private boolean standsOnEdge() {
        return rail.depth().compareTo(rail.width()) >= 0;
    }

    /** {@code fb1/Fb1 + fb2/Fb2} under weight and 0.6 wind, with wind's duration. */
    public double windRatio() {
        double down = momentLbIn(downLbPerIn) / rail.sxIn3() / allowedBendingPsi(standsOnEdge(), WIND);
        double across = ASD * momentLbIn(windLbPerIn) / rail.syIn3() / allowedBendingPsi(!standsOnEdge(), WIND);
        return down + across;
    }

    /** Bending under weight alone, with the duration of a load that stays. */
    public double standingRatio() {
        return momentLbIn(downLbPerIn) / rail.sxIn3() / allowedBendingPsi(standsOnEdge(), LASTING);
    }

    /** Sag in the end: {@code Kcr 5 w L4 / (384 E I)}, E wet. Source: NDS 2018 3.5.2. Check: PostCheckTest. */
    public Offset sag(double creep) {
        double e = rail.species().grade().modulus().psi() * WET_MODULUS;
        double l = span.inches();
        return Offset.inches(longTerm(5 * downLbPerIn * l * l * l * l / (384 * e * rail.ixIn4()), 0, creep));
    }

    /** {@code Kcr d(long) + d(short)}. Source: NDS 2018 Equation 3.5-1. Check: RailCreepCheck (CX33). */
    public static double longTerm(double lastingIn, double shortIn, double creep) {
        return creep * lastingIn + shortIn;
    }

    /** The three checks of a rail. */
    public List<Finding> findings(String part, DesignBasis basis) {
        return findings("rail", part, basis);
    }

    /** @param what the piece is: {@code rail}, or {@code board} where boards lie from post to post */
    public List<Finding> findings(String what, String part, DesignBasis basis) {
        String name = what.equals("rail") ? "Rail of " : "Boards of ";
        String their = what.equals("rail") ? "its" : "their";
        String sags = what.equals("rail") ? "it sags " : "they sag ";
        Severity underWind = basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
        double sagIn = sag(CREEP_WET).inches();
        return List.of(
                Checked.of(
                        what + ".wind",
                        underWind,
                        part,
                        name + part + ": weight and wind together take " + DecimalText.fixed(windRatio(), 2) + " of "
                                + their + " bending strength.",
                        Basis.clause("NDS 2018 3.9.2, wet service, wind duration 1.6"),
                        Measure.demand(windRatio(), 1, "")),
                Checked.of(
                        what + ".weight",
                        Severity.MUST_FIX,
                        part,
                        name + part + ": " + their + " weight alone takes " + DecimalText.fixed(standingRatio(), 2)
                                + " of " + their + " bending strength.",
                        Basis.clause("NDS 2018 3.3, wet service, duration 0.9"),
                        Measure.demand(standingRatio(), 1, "")),
                Checked.of(
                        what + ".sag",
                        Severity.CAUTION,
                        part,
                        name + part + ": in the end " + sags + DecimalText.fixed(sagIn, 2) + " in. between " + their
                                + " posts; more than 1/4 in. is seen.",
                        Basis.judgement("1/4 in. per bay, creep factor 2.0 of NDS 2018 3.5.2"),
                        Measure.demand(sagIn, SEEN.inches(), "in")));
    }
}
