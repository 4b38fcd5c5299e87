package plumbleaf.reference.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.PlaneGround;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.geometry.Plane;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/**
 * Weight of a welded frame from the printed weights of its tube, added up by hand, and the weight of clad leaves against what the trade expects of them.
 *
 * Source: AISC Steel Construction Manual 16th ed. Part 1, HSS2X2X1/8 3.05 lb/ft and HSS2X2X3/16 4.32 lb/ft; for clad leaves (4 x 6 ft 90 to 140 lb, 6 x 6 ft
 * 130 to 200 lb, wet) common practice, no source.
 * Tolerance: 0.005 lb/ft of the printed weight over the length of tube; clad leaves within the range.
 */
class LeafWeightCheck {
    /**
     * Two stiles of 69, two rails of 44-5/8, a mid rail of 42-5/8 and a brace over 42-5/8 by 32-1/2 in., on the centreline.
     */
    @ParameterizedTest
    @CsvSource({"HSS-2x2x0.125, 3.05", "HSS-2x2x0.1875, 4.32"})
    void aFrameWeighsItsLengthOfTube(String section, double printed) {
        Leaf leaf = leaf(48, section, new Cladding.Open());
        double feet = (2 * 69 + 2 * 44.625 + 42.625 + Math.hypot(42.625, 32.5)) / 12;
        assertThat(leaf.weight().frame().pounds()).isCloseTo(printed * feet, within(0.005 * feet));
    }

    @Test
    void cladLeavesWeighWhatTheTradeExpects() {
        assertThat(leaf(48, "TUBE-2x2x0.083", YardGates.cedar()).weight().wet().pounds())
                .isBetween(90.0, 140.0);
        assertThat(leaf(72, "TUBE-2x2x0.083", YardGates.cedar()).weight().wet().pounds())
                .isBetween(130.0, 200.0);
    }

    private static Leaf leaf(double clearIn, String frame, Cladding cladding) {
        PlaneGround level =
                new PlaneGround(Plane.of(PlanPoint.ORIGIN.at(Offset.ZERO), YardGates.ALONG, Slope.ZERO, Slope.ZERO));
        return Gates.plan(YardGates.ask(
                        clearIn,
                        71,
                        3,
                        new LeafShape.Square(),
                        new Hand(Side.LEFT, SwingWay.IN),
                        90,
                        YardGates.parts(frame, cladding, Joint.MITERED),
                        level))
                .leaves()
                .get(0);
    }
}
