package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.RodRuns;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.section.Rods;
import plumbleaf.engine.section.Shape;

/** Crossed braces, rods, through rails and brackets as pieces. */
class BracingTest {
    private static Leaf leaf(Bracing bracing, Joint joint, int midRails) {
        Outline outline = new Outline(
                Offset.inches(0.375),
                Offset.inches(48.375),
                Offset.inches(3),
                Offset.inches(51),
                Slope.ZERO,
                Slope.ZERO,
                Length.ZERO);
        GateParts parts = new GateParts(
                GateSamples.section("TUBE-2x2x0.083", Shape.SQUARE, 2, 0.083, 2.11),
                bracing,
                joint,
                Bracket.UNKNOWN,
                GateSamples.pipe(),
                GateSamples.pipe(),
                GateSamples.hinge(0),
                GateSamples.latch(),
                new Cladding.Open(),
                List.of());
        return LeafMaker.make(
                "G1a",
                new Hand(Side.LEFT, SwingWay.IN),
                outline,
                parts,
                midRails,
                new HingeSpec("hinge", Length.inches(9), Length.inches(9), 2, 0),
                Offset.inches(42));
    }

    @Test
    void aCrossInASquareHasOneWholeAndTwoHalves() {
        Leaf leaf = leaf(new Bracing.Cross(), Joint.MITERED, 0);
        double diagonal = 44 * Math.sqrt(2);
        assertThat(leaf.of(MemberRole.BRACE)).hasSize(3);
        assertThat(leaf.of(MemberRole.BRACE).get(0).cutLength().inches()).isCloseTo(diagonal, within(1e-9));
        for (int half = 1; half < 3; half++) {
            Member piece = leaf.of(MemberRole.BRACE).get(half);
            assertThat(piece.cutLength().inches()).isCloseTo(diagonal / 2 - 1, within(1e-9));
        }
        FrameJoint middle = leaf.joints().get(leaf.joints().size() - 1);
        assertThat(middle.members()).hasSize(3).first().isEqualTo("G1a.m5");
        assertThat(middle.at().r().inches()).isCloseTo(24.375, within(1e-9));
        assertThat(middle.at().z().inches()).isCloseTo(27, within(1e-9));
    }

    @Test
    void aRodRunsFromEyeToEyeAndBringsItsParts() {
        Leaf leaf = leaf(
                new Bracing.Rod(Length.inches(0.375), Force.pounds(100), RodRuns.FROM_TOP_HINGE), Joint.MITERED, 1);
        Member rod = leaf.of(MemberRole.ROD).get(0);
        assertThat(rod.cutLength().inches()).isCloseTo(44 * Math.sqrt(2) - 3, within(1e-9));
        assertThat(RodCut.half(rod).inches()).isCloseTo((44 * Math.sqrt(2) - 3 - 6) / 2, within(1e-9));
        assertThat(rod.from().z()).isGreaterThan(rod.to().z());
        assertThat(leaf.fittings().stream().filter(fitting -> fitting.what().equals("rod eye")))
                .hasSize(2);
        assertThat(leaf.fittings().stream().filter(fitting -> fitting.what().equals("turnbuckle")))
                .hasSize(1);
    }

    @Test
    void aRodCarriesWhatItsThreadDoes() {
        double area = Math.PI / 4 * 0.375 * 0.375;
        assertThat(Rods.threadCapacity(Rods.round(Length.inches(0.375))).pounds())
                .isCloseTo(0.75 * 58_000 * area / 2, within(1e-9));
    }

    @Test
    void railsThatRunThroughReachFromEdgeToEdgeAndStilesStandBetween() {
        Leaf leaf = leaf(Bracing.tubes(0), Joint.BUTTED_RAILS, 1);
        assertThat(leaf.of(MemberRole.TOP_RAIL).get(0).longPoint().inches()).isCloseTo(48, within(1e-9));
        assertThat(leaf.of(MemberRole.HINGE_STILE).get(0).longPoint().inches()).isCloseTo(44, within(1e-9));
        assertThat(leaf.of(MemberRole.MID_RAIL).get(0).longPoint().inches()).isCloseTo(44, within(1e-9));
        assertThat(leaf.joints().get(0).members().get(0)).isEqualTo("G1a.m3");
    }

    @Test
    void bracketsAreBoltedNotWelded() {
        Leaf leaf = leaf(Bracing.tubes(0), Joint.BRACKETED, 1);
        assertThat(leaf.welds()).isEmpty();
        assertThat(leaf.fittings().stream().filter(fitting -> fitting.what().equals("corner bracket")))
                .hasSize(6);
    }
}
