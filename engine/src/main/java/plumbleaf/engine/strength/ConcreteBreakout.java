package plumbleaf.engine.strength;

import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * A row of post-installed anchors tearing concrete out, pulled or pushed towards an edge. Cracked concrete of normal weight, no bars at the edge. Strength
 * level: never set against an allowable-stress force without {@link #allowable}. Breakout alone: steel, pullout, side blow-out, splitting and the product's own
 * least edge distances are its maker's.
 *
 * @param effectiveness kc: 17 for anchors set afterwards, 24 cast in (ACI 318-19 17.6.2.2.1)
 * @param strength f'c
 * @param embedment hef
 */
public record ConcreteBreakout(double effectiveness, Stress strength, Length embedment) {
    /** kc of anchors set afterwards, until a product test gives more. Source: ACI 318-19 17.6.2.2.1. */
    public static final double POST_INSTALLED = 17;

    /** phi, tension breakout without extra bars. Source: ACI 318-19 17.5.3. */
    public static final double PHI_TENSION = 0.65;

    /** phi, shear breakout without bars at the edge. Source: ACI 318-19 17.5.3, from memory. */
    public static final double PHI_SHEAR = 0.70;

    /** Where a cone meets a row of anchors: this many embedments, or edge distances, from the row. */
    private static final double CONE = 1.5;

    /**
     * One anchor far from every edge: {@code Nb = kc sqrt(f'c) hef^1.5}.
     * Source: ACI 318-19 17.6.2.2.1. Check: ConcreteBreakoutCheck (CX18, CX22, CX23).
     */
    public Force oneInTension() {
        double h = embedment.inches();
        return Force.pounds(effectiveness * Math.sqrt(strength.psi()) * h * Math.sqrt(h));
    }

    /** {@code ANc0 = 9 hef2}, the cone's base of one anchor. */
    public double wholeConeIn2() {
        return 9 * embedment.inches() * embedment.inches();
    }

    /**
     * The base of the cone of a group, cut at its edges: {@code ANc = (c1 + spread x + c2) (c3 + spread y + c4)}, each c at most 1.5 hef.
     *
     * @param spreadX from the first anchor to the last, one way
     * @param spreadY the other way; zero for one row
     * @param edges the four edge distances: x before, x after, y before, y after
     */
    public double coneIn2(Length spreadX, Length spreadY, Edges edges) {
        double most = CONE * embedment.inches();
        double x = Math.min(most, edges.xBefore().inches())
                + spreadX.inches()
                + Math.min(most, edges.xAfter().inches());
        double y = Math.min(most, edges.yBefore().inches())
                + spreadY.inches()
                + Math.min(most, edges.yAfter().inches());
        return x * y;
    }

    /** {@code psi_ed = 0.7 + 0.3 c / (1.5 hef)} for an edge nearer than 1.5 hef. Source: ACI 318-19 17.6.2.4. */
    public double nearEdge(Length nearest) {
        return Math.min(1, 0.7 + 0.3 * nearest.inches() / (CONE * embedment.inches()));
    }

    /**
     * A group pulled evenly: {@code Ncbg = (ANc / ANc0) psi_ed Nb}, psi_c 1 cracked, psi_ec 1.
     * Source: ACI 318-19 17.6.2.1. Check: ConcreteBreakoutCheck (CX18, CX23).
     */
    public Force groupInTension(Length spreadX, Length spreadY, Edges edges) {
        return oneInTension().times(coneIn2(spreadX, spreadY, edges) / wholeConeIn2() * nearEdge(edges.nearest()));
    }

    /**
     * One anchor pushed towards an edge in thick concrete: the lesser of {@code 7 (le/da)^0.2 sqrt(da) sqrt(f'c) ca1^1.5} and {@code 9 sqrt(f'c) ca1^1.5},
     * le the lesser of hef and 8 da. Source: ACI 318-19 17.7.2.2.1. Check: ConcreteBreakoutCheck (CX19, CX23).
     */
    public Force oneInShear(Length diameter, Length toEdge) {
        double da = diameter.inches();
        double le = Math.min(embedment.inches(), 8 * da);
        double byAnchor = 7 * StrictMath.pow(le / da, 0.2) * Math.sqrt(da);
        return Force.pounds(Math.min(byAnchor, 9) * rootTimes(toEdge));
    }

    /** {@code 9 sqrt(f'c) ca1^1.5}: the form without a diameter, which judges the side of a socket too. */
    public Force byEdgeAlone(Length toEdge) {
        return Force.pounds(9 * rootTimes(toEdge));
    }

    private double rootTimes(Length toEdge) {
        double c = toEdge.inches();
        return Math.sqrt(strength.psi()) * c * Math.sqrt(c);
    }

    /** {@code AVc = (3 ca1 + spread) min(1.5 ca1, ha)}, the face that breaks out, far from corners. */
    public static double faceIn2(Length toEdge, Length spread, Length thickness) {
        return (2 * CONE * toEdge.inches() + spread.inches()) * Math.min(CONE * toEdge.inches(), thickness.inches());
    }

    /** {@code psi_h = sqrt(1.5 ca1 / ha)}, at least 1, in concrete thinner than 1.5 ca1. Source: ACI 318-19 17.7.2.6. */
    public static double thin(Length toEdge, Length thickness) {
        return Math.max(1, Math.sqrt(CONE * toEdge.inches() / thickness.inches()));
    }

    /**
     * A row pushed square to an edge: {@code Vcbg = (AVc / AVc0) psi_h Vb, AVc0 = 4.5 ca1^2}, psi_c 1 cracked without bars.
     * Source: ACI 318-19 17.7.2.1. Check: ConcreteBreakoutCheck (CX19 to CX21, CX23).
     */
    public Force rowInShear(Length diameter, Length toEdge, Length spread, Length thickness) {
        double c = toEdge.inches();
        double share = faceIn2(toEdge, spread, thickness) / (4.5 * c * c);
        return oneInShear(diameter, toEdge).times(share * thin(toEdge, thickness));
    }

    /**
     * From strength level to allowable-stress level: {@code phi N / alpha}, alpha the load factor weighted by what acts.
     * Source: ACI 318-14 anchor evaluation reports, allowable-stress table. Check: ConcreteBreakoutCheck (CX22).
     */
    public static Force allowable(Force nominal, double phi, double loadFactor) {
        return nominal.times(phi / loadFactor);
    }

    /** Distances from the outermost anchors to the edges of the concrete. */
    public record Edges(Length xBefore, Length xAfter, Length yBefore, Length yAfter) {
        /** Edge on one side only. */
        public static Edges oneSide(Length toEdge) {
            Length far = Length.feet(100);
            return new Edges(far, far, toEdge, far);
        }

        public Length nearest() {
            Length least = xBefore;
            for (Length each : List.of(xAfter, yBefore, yAfter)) if (each.compareTo(least) < 0) least = each;
            return least;
        }
    }
}
