package plumbleaf.reference.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.GateAsk;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.GroundUnder;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.PlaneGround;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.Meeting;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Offset;

/**
 * Both leaves of a raked pair over a plane against the closed form c = c0 + r (m_s (1 - cos q) - m_t sin q), each with its own hinge side and the share of the
 * width as its r: half the leaf loses half the clearance. On level ground the leaves are each other in the mirror.
 *
 * Source: analytic geometry of a line turned about a plumb axis over a plane.
 * Tolerance: 1e-9 in. of rounding.
 */
class PairSwingCheck {
    private static final double TIGHT = 1e-9;
    private static final double CLEAR_IN = 168;
    private static final double GAP_IN = 3;

    private static GateAsk ask(double split, double along, double in, double opens) {
        GroundUnder ground = ground(along, in);
        GateAsk single = YardGates.ask(
                CLEAR_IN,
                60,
                GAP_IN,
                new LeafShape.Raked(),
                new Hand(Side.LEFT, SwingWay.IN),
                opens,
                YardGates.parts("TUBE-2x2x0.083", new Cladding.Open(), Joint.MITERED),
                ground);
        GateKind pair = new GateKind.Pair(
                split,
                Side.RIGHT,
                Stated.of(SwingWay.IN),
                Angle.degrees(opens),
                new HoldOpen.CaneBolt(),
                Meeting.usual());
        return new GateAsk(
                single.gate().withKind(pair),
                single.opening(),
                single.parts(),
                ground,
                single.gap(),
                single.drop(),
                single.hingesToTry(),
                single.display());
    }

    private static GroundUnder ground(double along, double in) {
        return new PlaneGround(new Plane(PlanPoint.ORIGIN.at(Offset.ZERO), along, in));
    }

    /** e of the catalogue's hinge: its pin stands so far off the leaf's plane, to the swing side. */
    private static final double OFF_LINE = 1.5;

    private static double at(double r, double ms, double mt, double q) {
        // The gap is asked for at the foot of the pin, which stands on the plane beside the line.
        double onPin = GAP_IN + OFF_LINE * mt + r * (ms * (1 - Math.cos(q)) - mt * Math.sin(q));
        return onPin - OFF_LINE * (ms * Math.sin(q) + mt * (1 - Math.cos(q)));
    }

    private static double least(double tip, double ms, double mt, double opensDeg) {
        double full = Math.toRadians(opensDeg);
        double least = GAP_IN + OFF_LINE * mt;
        for (double r : new double[] {0.375, tip}) {
            double turning = Math.atan2(mt, ms) + Math.atan2(OFF_LINE, r);
            for (double q : new double[] {full, turning, turning + Math.PI, turning - Math.PI})
                if (q >= 0 && q <= full) least = Math.min(least, at(r, ms, mt, q));
        }
        return least;
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.02, 0.01, 90", "0.375, -0.03, 0.015, 110", "0.6, 0.04, -0.02, 180", "0.5, 0, 0.02, 90"})
    void eachLeafFollowsTheClosedForm(double split, double along, double in, double opens) {
        GatePlan plan = Gates.plan(ask(split, along, in, opens));
        double both = CLEAR_IN - 2 * 0.75 - 0.625;
        for (int leaf = 0; leaf < 2; leaf++) {
            double width = both * (leaf == 0 ? split : 1 - split);
            Swing swing = plan.hangs().get(leaf).swing();
            double least = least(0.375 + width, leaf == 0 ? along : -along, in, opens);
            assertThat(swing.least().clear().inches()).isCloseTo(least, within(TIGHT));
        }
    }

    /** Rising 2 % to the swing side, square to the run the latch corner loses r times that: half the r, half the loss, the pin standing off the line as far as the corner then stands off it. */
    @Test
    void halfTheLeafLosesHalfTheClearance() {
        double lost = GAP_IN
                - Gates.plan(ask(0.5, 0, 0.02, 90))
                        .hangs()
                        .get(0)
                        .swing()
                        .least()
                        .clear()
                        .inches();
        double half = 0.375 + (CLEAR_IN - 2 * 0.75 - 0.625) / 2;
        assertThat(lost).isCloseTo(0.02 * half, within(TIGHT));
    }

    @Test
    void theLeavesAreEachOtherInTheMirror() {
        GatePlan plan = Gates.plan(ask(0.5, 0, 0, 90));
        Leaf a = plan.leaves().get(0);
        Leaf b = plan.leaves().get(1);
        assertThat(a.id()).isEqualTo("G1a");
        assertThat(b.id()).isEqualTo("G1b");
        assertThat(b.outline().width().inches()).isCloseTo(a.outline().width().inches(), within(TIGHT));
        for (int i = 0; i < a.members().size(); i++) {
            Member here = a.members().get(i);
            Member there = b.members().get(i);
            assertThat(here.id()).isEqualTo("G1a.m" + (i + 1));
            assertThat(there.id()).isEqualTo("G1b.m" + (i + 1));
            assertThat(there.role()).isEqualTo(here.role());
            assertThat(there.longPoint().inches()).isCloseTo(here.longPoint().inches(), within(TIGHT));
            assertThat(there.firstEnd().fromSquare().radians())
                    .isCloseTo(here.firstEnd().fromSquare().radians(), within(TIGHT));
        }
        assertThat(a.hand().hinge()).isEqualTo(Side.LEFT);
        assertThat(b.hand().hinge()).isEqualTo(Side.RIGHT);
    }
}
