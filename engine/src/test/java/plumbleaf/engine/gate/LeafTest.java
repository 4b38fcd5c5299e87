package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.section.Shape;

/** A leaf that can be checked in the head: 46-5/8 wide and 71 high, r from 3/8, of 2 in. tube. */
class LeafTest {
    private static final Hand HAND = new Hand(Side.LEFT, SwingWay.IN);
    private static final HingeSpec HINGES = new HingeSpec("HINGE", Length.inches(9), Length.inches(9), 2, 0);

    private static Leaf leaf(double slope, Joint joint, int braces, int midRails, Cladding cladding) {
        Outline outline = new Outline(
                Offset.inches(0.375),
                Offset.inches(47),
                Offset.inches(3),
                Offset.inches(74),
                Slope.ratio(slope),
                Slope.ratio(slope),
                Length.ZERO);
        GateParts parts = GateSamples.parts(cladding, joint, braces);
        return LeafMaker.make("G1a", HAND, outline, parts, midRails, HINGES, Offset.inches(42));
    }

    @Test
    void aSquareMiteredFrame() {
        Leaf leaf = leaf(0, Joint.MITERED, 0, 1, new Cladding.Open());
        Member stile = leaf.members().get(0);
        Member bottom = leaf.members().get(2);
        Member middle = leaf.members().get(3);
        assertThat(leaf.members().stream().map(Member::role))
                .containsExactly(
                        MemberRole.HINGE_STILE,
                        MemberRole.LATCH_STILE,
                        MemberRole.BOTTOM_RAIL,
                        MemberRole.MID_RAIL,
                        MemberRole.TOP_RAIL);
        assertThat(stile.cutLength().inches()).isCloseTo(69, within(1e-9));
        assertThat(stile.longPoint().inches()).isCloseTo(71, within(1e-9));
        assertThat(stile.firstEnd().fromSquare().inDegrees()).isCloseTo(45, within(1e-9));
        assertThat(stile.ends()).isEqualTo(EndsTurn.OPPOSED);
        assertThat(bottom.cutLength().inches()).isCloseTo(44.625, within(1e-9));
        assertThat(bottom.longPoint().inches()).isCloseTo(46.625, within(1e-9));
        assertThat(middle.cutLength().inches()).isCloseTo(42.625, within(1e-9));
        assertThat(middle.longPoint().inches()).isCloseTo(42.625, within(1e-9));
        assertThat(middle.firstEnd().fromSquare().inDegrees()).isCloseTo(0, within(1e-9));
        assertThat(leaf.outline().diagonals())
                .allSatisfy(diagonal ->
                        assertThat(diagonal.inches()).isCloseTo(Math.sqrt(46.625 * 46.625 + 71 * 71), within(1e-9)));
    }

    @Test
    void weldsOfASquareCornerAndATee() {
        Leaf leaf = leaf(0, Joint.MITERED, 0, 1, new Cladding.Open());
        List<Weld> corner = weldsAt(leaf, leaf.joints().get(0));
        assertThat(corner).extracting(Weld::kind).containsExactly(WeldKind.GROOVE, WeldKind.FILLET);
        assertThat(corner.get(0).length().inches()).isCloseTo(2 * 2 * Math.sqrt(2) + 2, within(1e-9));
        assertThat(corner.get(1).length().inches()).isCloseTo(2, within(1e-9));
        List<Weld> tee = weldsAt(leaf, leaf.joints().get(2));
        assertThat(tee).extracting(Weld::kind).containsExactly(WeldKind.FLARE_BEVEL, WeldKind.FILLET);
        assertThat(tee).allSatisfy(weld -> assertThat(weld.length().inches()).isCloseTo(4, within(1e-9)));
    }

    @Test
    void aRakedMiterIsHalfTheGradeMoreAndLess() {
        Leaf leaf = leaf(0.1, Joint.MITERED, 0, 1, new Cladding.Open());
        double half = Math.toDegrees(Math.atan(0.1)) / 2;
        Member hinge = leaf.members().get(0);
        Member latch = leaf.members().get(1);
        Member bottom = leaf.members().get(2);
        Member top = leaf.members().get(4);
        assertThat(hinge.firstEnd().fromSquare().inDegrees()).isCloseTo(45 + half, within(1e-9));
        assertThat(hinge.lastEnd().fromSquare().inDegrees()).isCloseTo(45 - half, within(1e-9));
        assertThat(latch.firstEnd().fromSquare().inDegrees()).isCloseTo(45 - half, within(1e-9));
        assertThat(latch.lastEnd().fromSquare().inDegrees()).isCloseTo(45 + half, within(1e-9));
        assertThat(bottom.firstEnd().fromSquare().inDegrees()).isCloseTo(45 + half, within(1e-9));
        assertThat(bottom.lastEnd().fromSquare().inDegrees()).isCloseTo(45 - half, within(1e-9));
        assertThat(top.firstEnd().fromSquare().inDegrees()).isCloseTo(45 - half, within(1e-9));
        // The long point of a stile and of a rail is the outline's own edge.
        assertThat(hinge.longPoint().inches()).isCloseTo(71, within(1e-9));
        assertThat(bottom.longPoint().inches()).isCloseTo(46.625 * Math.sqrt(1.01), within(1e-9));
    }

    @Test
    void aButtedEndAddsDepthTimesTheTangentToTheLongPoint() {
        Leaf leaf = leaf(0.1, Joint.BUTTED, 0, 1, new Cladding.Open());
        Member middle = leaf.of(MemberRole.MID_RAIL).get(0);
        assertThat(middle.cutLength().inches()).isCloseTo(42.625 * Math.sqrt(1.01), within(1e-9));
        assertThat(middle.longPoint().inches() - middle.cutLength().inches()).isCloseTo(2 * 0.1, within(1e-9));
        assertThat(middle.ends()).isEqualTo(EndsTurn.PARALLEL);
        assertThat(leaf.members().get(0).cutLength().inches()).isCloseTo(71, within(1e-9));
        assertThat(leaf.members().get(0).longPoint().inches()).isCloseTo(71.2, within(1e-9));
    }

    @Test
    void aBraceMeetsTwoFacesAndItsTwoCutsCloseTheCorner() {
        Leaf leaf = leaf(0, Joint.MITERED, 1, 1, new Cladding.Open());
        Member brace = leaf.of(MemberRole.BRACE).get(0);
        double run = 42.625;
        double rise = 69 / 2.0 - 2;
        assertThat(brace.cutLength().inches()).isCloseTo(Math.hypot(run, rise), within(1e-9));
        double climb = Math.toDegrees(Math.atan2(rise, run));
        assertThat(brace.firstEnd().cuts()).extracting(Cut::against).containsExactly("G1a.m1", "G1a.m3");
        assertThat(brace.firstEnd().cuts().get(0).fromSquare().inDegrees()).isCloseTo(climb, within(1e-9));
        assertThat(brace.firstEnd().cuts().get(1).fromSquare().inDegrees()).isCloseTo(90 - climb, within(1e-9));
        assertThat(brace.lastEnd().cuts()).extracting(Cut::against).containsExactly("G1a.m2", "G1a.m4");
        assertThat(leaf.joints().get(0).members()).containsExactly("G1a.m1", "G1a.m3", "G1a.m6");
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 2", "0.08, 1, 2", "-0.12, 1, 1", "0.05, 2, 2", "-0.05, 0, 1"})
    void bracesStayInsideTheirPanel(double slope, int midRails, int braces) {
        Leaf leaf = leaf(slope, Joint.MITERED, braces, midRails, new Cladding.Open());
        assertThat(leaf.of(MemberRole.BRACE)).hasSize(braces);
        for (Member brace : leaf.of(MemberRole.BRACE)) {
            assertThat(brace.from().r().inches()).isCloseTo(2.375, within(1e-9));
            assertThat(brace.to().r().inches()).isCloseTo(45, within(1e-9));
            assertThat(brace.from().z().inches()).isGreaterThan(leaf.outline().bottomIn(2.375));
            assertThat(brace.to().z().inches()).isLessThan(leaf.outline().topIn(45));
        }
    }

    @Test
    void aRoundFrameIsCopedWithEarsToTheStilesMiddle() {
        GateParts parts = new GateParts(
                GateSamples.section("PIPE", Shape.ROUND, 2, 0.12, 2.4),
                0,
                Joint.COPED,
                GateSamples.pipe(),
                GateSamples.pipe(),
                GateSamples.hinge(0),
                GateSamples.latch(),
                new Cladding.Open(),
                List.of());
        Outline outline = leaf(0, Joint.MITERED, 0, 1, new Cladding.Open()).outline();
        Leaf leaf = LeafMaker.make("G1a", HAND, outline, parts, 1, HINGES, Offset.inches(42));
        Member rail = leaf.of(MemberRole.MID_RAIL).get(0);
        assertThat(rail.firstEnd().coped()).isTrue();
        assertThat(rail.cutLength().inches()).isCloseTo(42.625, within(1e-9));
        assertThat(rail.longPoint().inches()).isCloseTo(44.625, within(1e-9));
    }

    @Test
    void weightIsTheSumOfItsPartsAndTheCentreOfGravityTheirMean() {
        Leaf leaf = leaf(0.07, Joint.MITERED, 1, 1, GateSamples.wood());
        double pounds = 0;
        double moment = 0;
        for (Member member : leaf.members()) {
            assertThat(member.weight().pounds()).isCloseTo(member.cutLength().inches() / 12 * 2.11, within(1e-9));
            pounds += member.weight().pounds();
            moment += member.weight().pounds() * member.middle().r().inches();
        }
        for (Nailer nailer : leaf.nailers()) {
            pounds += nailer.wet().pounds();
            moment += nailer.wet().pounds() * nailer.middle().r().inches();
        }
        for (Picket picket : leaf.pickets()) {
            pounds += picket.wet().pounds();
            moment += picket.wet().pounds()
                    * (picket.r().inches() + picket.width().inches() / 2);
        }
        for (Fitting fitting : leaf.fittings()) {
            pounds += fitting.weight().pounds();
            moment += fitting.weight().pounds() * fitting.at().r().inches();
        }
        assertThat(leaf.weight().wet().pounds()).isCloseTo(pounds, within(1e-9));
        assertThat(leaf.weight().centreOfGravity().r().inches()).isCloseTo(moment / pounds, within(1e-9));
        assertThat(leaf.weight().centreOfGravity().n().inches()).isPositive();
        assertThat(leaf.weight().dry()).isLessThan(leaf.weight().wet());
    }

    /** A clad steel-frame leaf of 4 x 6 ft weighs 90 to 140 lb wet (common practice, no source). */
    @Test
    void aCladLeafOfFourBySixFeetWeighsWhatTheTradeExpects() {
        double pounds =
                leaf(0, Joint.MITERED, 1, 1, GateSamples.wood()).weight().wet().pounds();
        assertThat(pounds).isBetween(90.0, 140.0);
    }

    @Test
    void theRailsTakeExactlyTheWeightOfTheInfill() {
        Leaf leaf = leaf(0.07, Joint.MITERED, 1, 1, GateSamples.wood());
        double onRails = leaf.railLoads().stream()
                .mapToDouble(load -> load.wet().pounds())
                .sum();
        double infill = leaf.pickets().stream()
                        .mapToDouble(picket -> picket.wet().pounds())
                        .sum()
                + leaf.nailers().stream()
                        .mapToDouble(nailer -> nailer.wet().pounds())
                        .sum();
        assertThat(onRails).isCloseTo(infill, within(1e-9));
    }

    @Test
    void wholePicketsFillTheLeafFromEdgeToEdge() {
        Leaf leaf = leaf(0.1, Joint.MITERED, 1, 1, GateSamples.wood());
        List<Picket> pickets = leaf.pickets();
        Picket last = pickets.get(pickets.size() - 1);
        assertThat(pickets.get(0).r().inches()).isCloseTo(0.375, within(1e-9));
        assertThat(last.r().inches() + last.width().inches()).isCloseTo(47, within(1e-9));
        assertThat(leaf.picketGap().inches()).isBetween(0.0625, 0.25);
        for (Picket picket : pickets) {
            assertThat(picket.length().inches()).isCloseTo(71, within(1e-9));
            assertThat(picket.longPoint().inches())
                    .isCloseTo(71 + 0.1 * picket.width().inches(), within(1e-9));
        }
    }

    @Test
    void holesAreMeasuredFromTheLongPointOfTheFirstEnd() {
        Leaf leaf = leaf(0, Joint.MITERED, 1, 1, GateSamples.wood());
        Member stile = leaf.members().get(0);
        assertThat(stile.holes()).extracting(hole -> hole.fromDatum().inches()).containsExactly(9.0, 62.0);
        Member bottom = leaf.members().get(2);
        // Long point at r = 3/8; the first bolt 3 in. inside the stile.
        assertThat(bottom.holes().get(0).fromDatum().inches()).isCloseTo(5, within(1e-9));
        Member middle = leaf.members().get(3);
        assertThat(middle.holes().get(0).fromDatum().inches()).isCloseTo(3, within(1e-9));
        double rightmost =
                bottom.holes().get(bottom.holes().size() - 1).fromDatum().inches();
        assertThat(rightmost).isCloseTo(46.625 - 5, within(1e-9));
    }

    /** Inertia of a bare frame by hand: two stiles at their r, rails and mid rail as lines, hinges on the axis, the latch at its edge. */
    @Test
    void inertiaAboutThePinAxis() {
        Leaf leaf = leaf(0, Joint.MITERED, 0, 1, new Cladding.Open());
        double stile = 69 / 12.0 * 2.11;
        double rail = 44.625 / 12 * 2.11;
        double middle = 42.625 / 12 * 2.11;
        double byHand = stile * (1.375 * 1.375 + 46 * 46)
                + 2 * rail * (1.375 * 1.375 + 1.375 * 46 + 46 * 46) / 3
                + middle * (2.375 * 2.375 + 2.375 * 45 + 45 * 45) / 3
                + 1.2 * 47 * 47;
        assertThat(leaf.weight().inertiaLbInS2()).isCloseTo(byHand / 386.0886, within(1e-9));
    }

    private static List<Weld> weldsAt(Leaf leaf, FrameJoint joint) {
        return leaf.welds().stream()
                .filter(weld -> weld.joint().equals(joint.id()))
                .toList();
    }
}
