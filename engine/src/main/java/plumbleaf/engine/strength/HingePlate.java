package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.Section;

/**
 * A hinge's plate welded upright to a post, pulling on its wall. Walls count with the design wall, 0.93 of the nominal one.
 *
 * @param height lb, length of the plate along the post
 * @param thickness tp
 * @param toOpenEnd from the plate's nearer end to the post's open top; a cap is not counted
 */
public record HingePlate(Length height, Length thickness, Length toOpenEnd) {
    /** Omega of the plate on a round post. Source: AISC 360-22 Table K2.1. */
    static final double SAFETY_ROUND = 1.67;
    /** Omega of the plate on a square post. Source: AISC 360-10 K1.3 (from memory). */
    static final double SAFETY_SQUARE = 1.5;
    /** Omega of punching. Source: AISC 360-22 J4.2. */
    private static final double SAFETY_PUNCHING = 2.0;
    /** Nearer to an open end than the end distance a wall has half its strength. Source: AISC 360-22 K1.4. */
    private static final double NEAR_THE_END = 0.5;

    /**
     * Nominal pull on the wall. Round: {@code 5.5 Fy t2 (1 + 0.25 lb/D) Qf}; square, in the form of 2010:
     * {@code Fy t2 / (1 - tp/B) [2 lb/B + 4 sqrt(1 - tp/B) Qf]}. Halved near an open end. Good for D/t to 50 and B/t to 40, Fy to 52 ksi.
     * Source: AISC 360-22 Table K2.1; AISC 360-10 Equation K1-12. Check: HingePlateCheck (CX01 to CX04).
     *
     * @param chordStress Qf, 1 where the wall is in tension
     */
    public Force nominal(Section post, double chordStress) {
        double fy = post.yieldStress().psi();
        double t = post.designWall().inches();
        double lb = height.inches();
        double full;
        if (post.isRound()) {
            full = 5.5 * fy * t * t * (1 + 0.25 * lb / post.depth().inches()) * chordStress;
        } else {
            double wide = post.depth().inches();
            double beta = thickness.inches() / wide;
            full = fy * t * t / (1 - beta) * (2 * lb / wide + 4 * Math.sqrt(1 - beta) * chordStress);
        }
        return Force.pounds(isNearOpenEnd(post) ? full * NEAR_THE_END : full);
    }

    /** What the wall may be pulled with in allowable-stress design. */
    public Force allowable(Section post, double chordStress) {
        return nominal(post, chordStress).times(1 / (post.isRound() ? SAFETY_ROUND : SAFETY_SQUARE));
    }

    /** In-plane moment of the plate on a round post: {@code 0.8 lb Rn}. Source: AISC 360-22 Table K2.1. Check: HingePlateCheck (CX01). */
    public Moment nominalMomentInPlane(Section roundPost, double chordStress) {
        return Moment.poundInches(
                0.8 * height.inches() * nominal(roundPost, chordStress).pounds());
    }

    /**
     * How far from an open end the plate needs to be: round {@code D (1.25 - b/2)}, square {@code B sqrt(1 - b)}, b = tp over the post's size.
     * Source: AISC 360-22 K1.4. Check: HingePlateCheck (CX10, CX11).
     */
    public Length endDistance(Section post) {
        double size = post.depth().inches();
        double beta = thickness.inches() / size;
        return Length.inches(post.isRound() ? size * (1.25 - beta / 2) : size * Math.sqrt(1 - beta));
    }

    public boolean isNearOpenEnd(Section post) {
        return toOpenEnd.compareTo(endDistance(post)) < 0;
    }

    /**
     * Chord stress factor where the post's own bending presses the wall: {@code Qf = 1 - 0.3 U (1 + U)}; 1 in tension.
     * Source: AISC 360-22 K1.3. Check: HingePlateCheck (CX04, CX05).
     *
     * @param utilisation U, the post's stress there over {@code 0.6 Fy}, on the compressed face
     */
    public static double chordStress(double utilisation) {
        return 1 - 0.3 * utilisation * (1 + utilisation);
    }

    /**
     * In-plane moment of an upright tab on a square wall: {@code Fy t2 lb [1/(2 n) + 2/sqrt(1 - b) + n/(1 - b)]}, n = lb/B, b = tp/B. Below b of 0.25 a
     * rational analysis, outside the table. Source: AISC 360-16 Equation K3-6. Check: HingePlateCheck (CX06).
     */
    public Moment nominalMomentOnSquare(Section post) {
        double wide = post.depth().inches();
        double t = post.designWall().inches();
        double eta = height.inches() / wide;
        double beta = thickness.inches() / wide;
        double factor = 1 / (2 * eta) + 2 / Math.sqrt(1 - beta) + eta / (1 - beta);
        return Moment.poundInches(post.yieldStress().psi() * t * t * height.inches() * factor);
    }

    /** Punching under an eccentric tab: {@code Fu t lp2 / 5}. Source: AISC Manual Equation 10-7a. Check: HingePlateCheck (CX07). */
    public Moment nominalPunchingMoment(Section post) {
        double lp = height.inches();
        return Moment.poundInches(
                post.ultimateStress().psi() * post.designWall().inches() * lp * lp / 5);
    }

    /**
     * Bearing of a through-bolt on one open wall: {@code 1.8 Fy d t}, nominal; omega 2. Snug only, or with a sleeve.
     * Source: AISC 360-22 J7(a). Check: HingePlateCheck (CX12).
     */
    public static Force boltBearing(Stress yield, Length bolt, Length designWall) {
        return Force.pounds(1.8 * yield.psi() * bolt.inches() * designWall.inches());
    }

    /**
     * What the plate may tilt the wall with in allowable-stress design, in its own plane: on a round post 0.8 lb Rn, on a square one the tab's moment or, where
     * that is less, punching. Halved near an open end like the pull. Source: AISC 360-22 Table K2.1; AISC 360-16 K3-6; AISC Manual 10-7a. Check: HingePlateCheck.
     */
    public Moment allowableTilt(Section post, double chordStress) {
        if (post.isRound()) return nominalMomentInPlane(post, chordStress).times(1 / SAFETY_ROUND);
        double tab = nominalMomentOnSquare(post).poundInches() / SAFETY_SQUARE;
        double punching = nominalPunchingMoment(post).poundInches() / SAFETY_PUNCHING;
        return Moment.poundInches(Math.min(tab, punching) * (isNearOpenEnd(post) ? NEAR_THE_END : 1));
    }
}
