package plumbleaf.reference.connection;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.strength.ConcreteBreakout;
import plumbleaf.engine.strength.ConcreteBreakout.Edges;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Concrete torn out by a group of anchors, pulled and pushed towards an edge, and from strength level to allowable-stress level.
 * Source: public anchor design guide to ACI 318-19 chapter 17, October 2025, pages 86, 88, 98, 158 (CX18 to CX21, printed); an anchor evaluation report's
 * allowable-stress table (CX22, printed); ACI 318-19 17.6.2 and 17.7.2 as read there (CX23, computed).
 * Tolerance: 0.05 to 0.5 %, the printed digits. CX23 guards against slips, not against a misread formula.
 */
class ConcreteBreakoutCheck {
    private static final Length FAR = Length.feet(100);

    private static Length inches(Vector vector, String key) {
        return Length.inches(vector.in(key));
    }

    private static ConcreteBreakout of(Vector vector, double kc) {
        return new ConcreteBreakout(kc, Stress.psi(vector.in("fc_psi")), inches(vector, "hef_in"));
    }

    @Test
    void groupOfSixteenNearAnEdge() {
        Vector vector = Vectors.one("connection", "CX18");
        ConcreteBreakout breakout = of(vector, vector.in("kc"));
        Edges edges = Edges.oneSide(inches(vector, "edge_in"));
        vector.check("ANc_in2", breakout.coneIn2(Length.inches(27), Length.inches(18), edges));
        vector.check("ANc0_in2", breakout.wholeConeIn2());
        vector.check("psi_ed", breakout.nearEdge(edges.nearest()));
        vector.check("Nb_lb", breakout.oneInTension().pounds());
        vector.check(
                "Ncbg_lb",
                breakout.groupInTension(Length.inches(27), Length.inches(18), edges)
                        .pounds());
    }

    @Test
    void rowPushedTowardsAnEdge() {
        Vector vector = Vectors.one("connection", "CX19");
        ConcreteBreakout breakout = new ConcreteBreakout(
                ConcreteBreakout.POST_INSTALLED, Stress.psi(vector.in("fc_psi")), inches(vector, "le_in"));
        Length edge = inches(vector, "ca1_in");
        vector.check("Vb_b_lb", breakout.byEdgeAlone(edge).pounds());
        vector.check(
                "Vb_b_lb", breakout.oneInShear(inches(vector, "da_in"), edge).pounds());
        double share = vector.in("AVc_in2") / vector.out("AVc0_in2");
        vector.check(
                "Vcbg_lb", breakout.oneInShear(inches(vector, "da_in"), edge).pounds() * share * vector.in("psi_c"));
    }

    @Test
    void thinMember() {
        Vector vector = Vectors.one("connection", "CX20");
        Length edge = inches(vector, "ca1_in");
        Length thick = inches(vector, "ha_in");
        vector.check("AVc_in2", ConcreteBreakout.faceIn2(edge, Length.inches(27), thick));
        vector.check("psi_h", ConcreteBreakout.thin(edge, thick));
    }

    @Test
    void faceOfAPair() {
        Vector vector = Vectors.one("connection", "CX21");
        vector.check(
                "AVc_in2",
                ConcreteBreakout.faceIn2(inches(vector, "ca1_in"), inches(vector, "s_in"), inches(vector, "ha_in")));
    }

    @Test
    void fromStrengthLevelToAllowableStressLevel() {
        Vector vector = Vectors.one("connection", "CX22");
        Force nominal = of(vector, vector.in("k")).oneInTension();
        double alpha = 1.2 * vector.in("D_share") + 1.6 * vector.in("L_share");
        vector.check("alpha", alpha);
        vector.check("Ncb_lb", nominal.pounds());
        vector.check(
                "Na_lb",
                ConcreteBreakout.allowable(nominal, vector.in("phi"), alpha).pounds());
    }

    @Test
    void hingePlateByAnEdge() {
        Vector vector = Vectors.one("connection", "CX23");
        ConcreteBreakout breakout = of(vector, vector.in("kc"));
        Length edge = inches(vector, "ca_in");
        Length spread = inches(vector, "s_in");
        Edges edges = new Edges(FAR, FAR, edge, FAR);
        vector.check("Nb_lb", breakout.oneInTension().pounds());
        vector.check("ANc_in2", breakout.coneIn2(spread, Length.ZERO, edges));
        vector.check("psi_ed", breakout.nearEdge(edge));
        Force tension = breakout.groupInTension(spread, Length.ZERO, edges);
        vector.check("Ncbg_lb", tension.pounds());
        vector.check("phiNcbg_lb", tension.pounds() * ConcreteBreakout.PHI_TENSION);
        Length thick = inches(vector, "ha_in");
        vector.check("Vb_lb", breakout.oneInShear(inches(vector, "da_in"), edge).pounds());
        vector.check("AVc_in2", ConcreteBreakout.faceIn2(edge, spread, thick));
        Force shear = breakout.rowInShear(inches(vector, "da_in"), edge, spread, thick);
        vector.check("Vcbg_lb", shear.pounds());
        vector.check("phiVcbg_lb", shear.pounds() * ConcreteBreakout.PHI_SHEAR);
    }
}
