package plumbleaf.reference.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.gate.EndsTurn;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.MiterCuts;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.gate.PlaneGround;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * Saw settings, long points and centrelines of a raked frame against its corners found from coordinates, and weld lines round tube against an elliptic
 * integral.
 *
 * Source: plane geometry (the cut runs from the outer to the inner corner of two faces a tube's depth apart); Abramowitz and Stegun, Handbook of
 * Mathematical Functions, Table 17.1, E(m = 0.5) = 1.350643881 (from memory).
 * Tolerance: 1e-9 of an inch and of a degree for the cuts; 2e-5 in. for the weld lines, the error of the formulas used.
 */
class MiterCheck {
    private static final double E_OF_HALF = 1.350643881;

    @ParameterizedTest
    @ValueSource(doubles = {-0.2, -0.08, -0.02, 0, 0.03, 0.125, 0.25})
    void aMiterRunsFromTheOuterToTheInnerCorner(double grade) {
        Leaf leaf = leaf(grade, Joint.MITERED);
        Place outer = leaf.outline().corners().get(0);
        double slope = leaf.outline().bottom().ratio();
        double innerR = outer.r().inches() + 2;
        double innerZ = outer.z().inches() + 2 * slope + 2 * Math.sqrt(1 + slope * slope);
        double cutFromPlumb = Math.toDegrees(
                Math.atan2(innerR - outer.r().inches(), innerZ - outer.z().inches()));
        Member stile = leaf.of(MemberRole.HINGE_STILE).get(0);
        Member rail = leaf.of(MemberRole.BOTTOM_RAIL).get(0);
        // A stile is plumb, so a cut lying so far from plumb is 90 degrees less that from square.
        assertThat(stile.firstEnd().fromSquare().inDegrees()).isCloseTo(90 - cutFromPlumb, within(1e-9));
        assertThat(rail.firstEnd().fromSquare().inDegrees()).isCloseTo(90 - cutFromPlumb, within(1e-9));
        assertThat(stile.longPoint().inches()).isCloseTo(71, within(1e-9));
        assertThat(rail.longPoint().inches())
                .isCloseTo(leaf.width().inches() * Math.sqrt(1 + slope * slope), within(1e-9));
        assertThat(stile.ends()).isEqualTo(EndsTurn.OPPOSED);
        // The inner corners lie a tube's depth inside both stiles.
        assertThat(rail.shortPoint().inches())
                .isCloseTo((leaf.width().inches() - 4) * Math.sqrt(1 + slope * slope), within(1e-9));
        assertThat(List.of(rail, stile)).allMatch(Member::hasShortPoint);
        assertThat(leaf.of(MemberRole.BRACE))
                .as("pointed in its corners")
                .isNotEmpty()
                .noneMatch(Member::hasShortPoint);
        assertThat(stile.shortPoint().inches()).isCloseTo(71 - 4 * Math.sqrt(1 + slope * slope), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.2, -0.08, 0.03, 0.125, 0.25})
    void aButtedRailIsAParallelogramBetweenPlumbFaces(double grade) {
        Member rail = leaf(grade, Joint.BUTTED).of(MemberRole.MID_RAIL).get(0);
        double run = 46.625 - 4;
        double slope = Math.abs(grade);
        double climb = Math.atan(slope);
        double upperEdge = run / Math.cos(climb);
        // The lower edge begins where the plumb face crosses it, depth x tan further along.
        double shift = 2 * slope;
        assertThat(rail.cutLength().inches()).isCloseTo(upperEdge, within(1e-9));
        assertThat(rail.longPoint().inches()).isCloseTo(upperEdge + shift, within(1e-9));
        assertThat(rail.firstEnd().fromSquare().inDegrees()).isCloseTo(Math.toDegrees(climb), within(1e-9));
        assertThat(rail.ends()).isEqualTo(EndsTurn.PARALLEL);
    }

    @Test
    void weldRoundAMiteredPipeIsAnEllipse() {
        Length round = MiterCuts.ellipse(Length.inches(2), Angle.degrees(45));
        assertThat(round.inches()).isCloseTo(4 * Math.sqrt(2) * E_OF_HALF, within(1e-6));
    }

    @Test
    void weldRoundACopeOfEqualPipesIsTwoHalfEllipses() {
        Length round = MiterCuts.saddle(Length.inches(2));
        assertThat(round.inches()).isCloseTo(4 * Math.sqrt(2) * E_OF_HALF, within(2e-5));
    }

    private static Leaf leaf(double grade, Joint joint) {
        PlaneGround ground = new PlaneGround(
                Plane.of(PlanPoint.ORIGIN.at(Offset.ZERO), YardGates.ALONG, Slope.ratio(grade), Slope.ZERO));
        return Gates.plan(YardGates.ask(
                        48,
                        71,
                        3,
                        new LeafShape.Raked(),
                        new Hand(Side.LEFT, SwingWay.IN),
                        90,
                        YardGates.parts("TUBE-2x2x0.083", YardGates.cedar(), joint),
                        ground))
                .leaves()
                .get(0);
    }
}
