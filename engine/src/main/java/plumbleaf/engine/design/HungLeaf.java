package plumbleaf.engine.design;

import java.util.List;
import java.util.Optional;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.strength.SecondOrder;

/**
 * A leaf as it hangs: its sag, and the forces in every case.
 *
 * @param limits what the drop is judged by
 * @param post id of the post it hangs on
 * @param latchPost id of the post it latches to; a leaf of a pair latches to the other leaf
 * @param workings pressures, drop, lean and frequency, line by line for the calculation book; none in a search
 */
public record HungLeaf(
        HungGate gate,
        GateSag sag,
        SagLimits limits,
        List<CaseForces> cases,
        List<HingeUse> hinges,
        String post,
        Optional<String> latchPost,
        List<Working> workings) {
    /** A leaf that loses less of its weight has no wood to dry: what adding up its parts in another order leaves. */
    private static final double NO_WATER = 1e-9;

    public HungLeaf {
        cases = List.copyOf(cases);
        hinges = List.copyOf(hinges);
        workings = List.copyOf(workings);
    }

    /** The same with how it was worked out. */
    HungLeaf with(List<Working> how) {
        return new HungLeaf(gate, sag, limits, cases, hinges, post, latchPost, how);
    }

    /** What the hinge post's lean in soft ground adds to the moment at its foot: a factor of 1 and a little. */
    public double amplification() {
        Length topHinge = Length.inches(hinges.get(hinges.size() - 1).z().inches());
        Force weight = gate.leaf().weight().wet().plus(gate.hingePost().weightOf(gate.hingePostHeight()));
        return gate.isOnWall()
                ? 1
                : SecondOrder.ofPost(
                        gate.hingePost(), weight, topHinge, gate.foot().soft().across());
    }

    /**
     * How far the latch corner comes up in soft soil as the wet wood dries: {@code (1 - W_dry / W_wet)} of the elastic drop, both weights taken to hang at the
     * same place, the play of hinges and brackets apart, which stays taken up. + up. Source: linear statics. Check: LatchMovesTest.
     */
    public Offset dryRise() {
        double wet = gate.leaf().weight().wet().pounds();
        double lost = wet > 0 ? 1 - gate.leaf().weight().dry().pounds() / wet : 0;
        if (lost < NO_WATER) return Offset.ZERO;
        double elastic = sag.soil().soft().inches()
                - sag.byCause().hingeSlack().inches()
                - sag.sway().framePlay().inches();
        return Offset.inches(lost * elastic);
    }

    /** Id of the leaf. */
    public String id() {
        return gate.leaf().id();
    }
}
